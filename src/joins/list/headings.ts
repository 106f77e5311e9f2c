import { smallLetters } from '../../text/small-letters.ts';
import type { ListField } from './list-fields.ts';

/** A heading as it is compared: small letters without accents, points and brackets. */
export const plainHeading = (text: string): string =>
  smallLetters(text)
    .replace(/\[[^\]]*\]|\([^)]*\)/g, ' ')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** Headings of wire and tube lists in English, German, Spanish and French, as they are met; a guess, which is shown. */
const met: Readonly<Record<ListField, string>> = {
  tag: 'tag; join; id; kennzeichen; bmk; referencia; repere de liaison',
  label:
    'wire number; wire no; wire; wire label; number; no; label; mark; tube number; tube no; adernummer; drahtnummer; nummer; nr; leitungsnummer; schlauchnummer; beschriftung; numero de cable; numero de hilo; numero; etiqueta; numero de fil; n de fil; n; fil; repere; etiquette',
  kind: 'kind; type; sort; art; typ; tipo; clase; genre; nature',
  name: 'function; description; name; funktion; bezeichnung; beschreibung; funcion; descripcion; nombre; fonction; designation; nom',
  from: 'from; source; end 1; end a; from terminal; terminal 1; from pin; von; quelle; ziel 1; ende 1; klemme von; anschluss 1; desde; origen; de; extremo 1; borne 1; depart; origine; extremite 1; tenant; port 1',
  to: 'to; destination; target; end 2; end b; to terminal; terminal 2; to pin; nach; ziel; ziel 2; ende 2; klemme nach; anschluss 2; hasta; destino; a; extremo 2; borne 2; vers; arrivee; extremite 2; aboutissant; port 2',
  fromSection:
    'from section; section 1; from location; location 1; von ort; ort von; sektion von; ort 1; seccion 1; lugar 1; desde seccion; section depart; lieu 1; emplacement 1',
  toSection:
    'to section; section 2; to location; location 2; nach ort; ort nach; sektion nach; ort 2; seccion 2; lugar 2; hasta seccion; section arrivee; lieu 2; emplacement 2',
  size: 'size; cross section; wire size; gauge; awg; section; mm2; diameter; querschnitt; durchmesser; grosse; seccion; calibre; diametro; section de fil; diametre; taille',
  fromSize: 'size 1; from size; size from; querschnitt 1; querschnitt von; seccion 1 mm2; section 1 mm2',
  toSize: 'size 2; to size; size to; querschnitt 2; querschnitt nach; seccion 2 mm2; section 2 mm2',
  colour: 'colour; color; wire colour; wire color; farbe; aderfarbe; couleur; coul',
  fromColour: 'colour 1; color 1; from colour; from color; farbe 1; farbe von; color desde; couleur 1',
  toColour: 'colour 2; color 2; to colour; to color; farbe 2; farbe nach; color hasta; couleur 2',
  cable:
    'cable; cable number; cable no; cable tag; kabel; kabelnummer; kabel nr; leitung; manguera; nombre del cable; cable n',
  core: 'core; conductor; core number; core no; ader; ader nr; hilo; conductor numero; conducteur; brin; ame',
  potential:
    'potential; signal; voltage; net; potenzial; potential name; spannung; potencial; tension; senal; potentiel',
  box: 'box; junction box; jb; panel; klemmkasten; kasten; schrank; ventilinsel; caja; caja de conexiones; armario; boite; boitier; coffret; boite de jonction',
  split: 'split; shipping split; trennstelle; division; punto de corte; coupure; separation',
  length: 'length; lange; laenge; longitud; largo; longueur; long',
  torque: 'torque; drehmoment; anzugsmoment; par; par de apriete; couple; couple de serrage',
  test: 'test; prufung; pruefung; prueba; ensayo; essai; controle',
  note: 'note; notes; remark; remarks; comment; bemerkung; hinweis; kommentar; nota; observaciones; comentario; remarque; remarques; commentaire',
};

const fieldOf: ReadonlyMap<string, ListField> = new Map(
  Object.entries(met).flatMap(([field, headings]) =>
    headings.split('; ').map((heading) => [heading, field as ListField] as const),
  ),
);

/** What a heading most likely stands over, by its words alone. */
export const fieldOfHeading = (heading: string): ListField | undefined => fieldOf.get(plainHeading(heading));
