import type { JoinKind } from '../join-kinds.ts';
import { plainHeading } from './headings.ts';

const words: Readonly<Record<JoinKind, string>> = {
  conductor: 'conductor; wire; core; cable; ader; draht; leiter; leitung; hilo; fil; conducteur',
  tube: 'tube; air tube; pneumatic tube; schlauch pneumatik; luftschlauch; pneumatikschlauch; tubo; tubo neumatico; tuyau; tuyau d air',
  hose: 'hose; water hose; product hose; schlauch; wasserschlauch; manguera; flexible',
  drain: 'drain; ablauf; abfluss; desague; drenaje; vidange; ecoulement',
  duct: 'duct; kanal; luftkanal; conducto; gaine; conduit',
  bond: 'bond; bonding; protective bond; schutzleiter; potentialausgleich; erdung; puesta a tierra; liaison equipotentielle; mise a la terre',
  mechanical:
    'mechanical; bolt; bolted joint; mechanisch; schraube; verschraubung; mecanico; tornillo; mecanique; boulon',
  belt: 'belt; riemen; gurt; correa; banda; courroie; bande',
  guard: 'guard; schutz; schutzhaube; verkleidung; resguardo; protector; carter; capot',
  'transport lock':
    'transport lock; transportsicherung; bloqueo de transporte; bloqueo; verrou de transport; bride de transport',
  'protective film': 'protective film; film; schutzfolie; pelicula protectora; film de protection',
  drained: 'drained; entleert; drenado; vidange faite; vide',
  'blown out': 'blown out; ausgeblasen; soplado; souffle',
  dried: 'dried; getrocknet; secado; seche',
  other: 'other; sonstiges; otro; autre',
};

const kindOf: ReadonlyMap<string, JoinKind> = new Map(
  Object.entries(words).flatMap(([kind, all]) =>
    all.split('; ').map((word) => [word, kind as JoinKind] as const),
  ),
);

/** The kind of a join by a word for it in English, German, Spanish or French. */
export const kindOfWord = (text: string): JoinKind | undefined => kindOf.get(plainHeading(text));
