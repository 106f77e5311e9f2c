import { memo, type ReactElement, useState } from 'react';
import { type Form, formFor } from '../../book/form.ts';
import { valueAt } from '../../book/index.ts';
import { removePart } from '../commands/change-list.ts';
import { GoLink } from '../shell/go-link.tsx';
import { usePage, usePagePart } from '../state/page-context.ts';
import { KindField } from './choice-field.tsx';
import { KnownHow } from './known-how.tsx';
import { LeafField } from './leaf-field.tsx';
import { ListSection } from './list-section.tsx';
import { isLeaf, type PartForm, type Place, placeAt } from './place-at.ts';
import { PropertiesField } from './properties-field.tsx';
import { focusSoon, useWriting } from './write-context.ts';

interface FieldProps {
  readonly path: string;
  readonly place: Place;
}

const useLabel = (path: string): { readonly name: string; readonly label: string } => {
  const { words } = usePage();
  const name = words.fieldName(path);
  const label = usePagePart(({ book }) => (book === undefined ? name : words.placeName(book, path)));
  return { name, label };
};

const isMember = (path: string): boolean => /\/\d+$/.test(path);

/** What everybody knows of a field is not said beside it. */
const needsHelp = (path: string, help: string, name: string): boolean =>
  !/\/(?:name|note)$|^\/about\/(?:units|dates)\//.test(path) &&
  help.replace(/\.$/, '').toLowerCase() !== name.toLowerCase();

/** A text that people write takes more room than a value, a name or a tag. */
const isWordy = (path: string, form: Form): boolean =>
  form.is === 'text' &&
  form.tag === undefined &&
  form.unitOf === undefined &&
  !/\/name$|^\/about\/dates\//.test(path);

/** One line: what it is, what stands there, how it is known, and what the schema says of it. */
const FieldRow = ({ path, place }: FieldProps): ReactElement => {
  const { words } = usePage();
  const { name, label } = useLabel(path);
  const { form } = place;
  const helped = words.has(place.help) && needsHelp(path, words.say(place.help), name);
  return (
    <div className="frow" data-wide={isWordy(path, form) || undefined}>
      <span className="flabel">{form.is === 'choice' ? words.fieldName('/kind') : name}</span>
      <span className="fvalue">
        {form.is === 'row' ? (
          form.of.map((of, index) => (
            <LeafField
              // biome-ignore lint/suspicious/noArrayIndexKey: the places of a row are fixed
              key={index}
              path={`${path}/${index}`}
              place={{ form: of, help: '', must: true }}
              label={`${label}, ${index + 1}`}
            />
          ))
        ) : form.is === 'choice' ? (
          <KindField
            path={path}
            label={`${label}, ${words.fieldName('/kind')}`}
            must={place.must || isMember(path)}
            form={form}
          />
        ) : (
          <LeafField path={path} place={place} label={label} />
        )}
      </span>
      {form.is === 'quantity' && <KnownHow path={path} label={label} />}
      {helped && <span className="fhelp">{words.say(place.help)}</span>}
    </div>
  );
};

/** Parts of a floor stand on a page of their own. */
const hasOwnPage = (path: string): boolean =>
  /^\/floors\/\d+\/(?!liquid$)[a-zA-Z]+$/.test(path) || path === '/line';

/** A part within a part: its fields under a heading, shut as long as nothing of it is written. */
const InnerPart = ({ path, place }: FieldProps): ReactElement => {
  const page = usePage();
  const { say, has } = page.words;
  const { address } = useWriting();
  const { name } = useLabel(path);
  const value = usePagePart(({ book }) => valueAt(book, path));
  const [open, setOpen] = useState(false);
  const written = value !== undefined;
  const own = hasOwnPage(path);
  const shown = !own && (written || open);
  return (
    <section className="inner">
      <div className="inner-head">
        <h3>{own ? <GoLink to={address(path)}>{name}</GoLink> : name}</h3>
        {has(place.help) && <span className="fhelp">{say(place.help)}</span>}
        {!own && !written && !open && place.form.is !== 'choice' && (
          <button
            type="button"
            aria-label={say('write.begin', { name })}
            onClick={() => {
              setOpen(true);
              focusSoon(`[data-path^="${path}/"]`);
            }}
          >
            {say('write.add')}
          </button>
        )}
        {!own && written && place.form.is !== 'choice' && (
          <button
            type="button"
            aria-label={say('write.remove', { name })}
            onClick={() => {
              setOpen(false);
              removePart(page, path);
            }}
          >
            {say('write.takeAway')}
          </button>
        )}
      </div>
      {!own && place.form.is === 'choice' ? <PartFields path={path} /> : shown && <PartFields path={path} />}
    </section>
  );
};

const InnerList = ({ path, place }: FieldProps): ReactElement | null => {
  const { words } = usePage();
  const { name } = useLabel(path);
  if (place.form.is !== 'list') return null;
  return (
    <section className="inner">
      <div className="inner-head">
        <h3>{name}</h3>
        {words.has(place.help) && <span className="fhelp">{words.say(place.help)}</span>}
      </div>
      <ListSection path={path} form={place.form} label={name} />
    </section>
  );
};

const isSimple = (form: Form): boolean =>
  isLeaf(form) || (form.is === 'list' && isLeaf(form.of)) || form.is === 'either';

/** What comes first and last whatever the thing is; between them the order of the schema. */
const early = ['name', 'tag', 'role', 'kind'];
const late = ['after', 'capacity', 'room', 'rating', 'note'];
const rankOf = (path: string): number => {
  const key = path.slice(path.lastIndexOf('/') + 1);
  return early.includes(key) ? early.indexOf(key) - early.length : late.indexOf(key) + 1;
};

/** All fields of a part, then its lists, then the parts within it; a key in one of them draws none of the others anew. */
export const PartFields = memo(({ path }: { readonly path: string }): ReactElement | null => {
  const book = usePagePart((state) => state.book);
  const place = placeAt(book, path);
  if (place === undefined) return null;
  const value = valueAt(book, path);
  const chosen = place.form.is === 'choice' && value === undefined ? undefined : formFor(place.form, value);
  const part: PartForm | undefined = chosen?.is === 'part' ? chosen : undefined;
  const by = place.form.is === 'choice' ? place.form.by : undefined;
  const inside = [...(part?.fields ?? [])].flatMap(([key, form]): readonly FieldProps[] => {
    const at = `${path}/${key}`;
    // the version and the address of the schema are no one's to write
    const found = key === by || (path === '' && isLeaf(form)) ? undefined : placeAt(book, at);
    return found === undefined ? [] : [{ path: at, place: found }];
  });
  const simple = inside
    .filter(({ place: { form } }) => isSimple(form))
    .sort((a, b) => rankOf(a.path) - rankOf(b.path));
  const rows = simple.map((each) =>
    each.place.form.is === 'list' || each.place.form.is === 'either' ? (
      <SimpleList key={each.path} {...each} />
    ) : (
      <FieldRow key={each.path} {...each} />
    ),
  );
  // where a part has nothing of its own but a note, that stands below what is in it
  const noteLast = simple.length === 1 && simple[0]?.path.endsWith('/note') === true;
  return (
    <div className="part-fields">
      {place.form.is === 'choice' && <FieldRow path={`${path}`} place={{ ...place, help: '' }} />}
      {!noteLast && rows}
      {inside
        .filter(({ place: { form } }) => !isSimple(form))
        .map((each) =>
          each.place.form.is === 'list' ? (
            <InnerList key={each.path} {...each} />
          ) : (
            <InnerPart key={each.path} {...each} />
          ),
        )}
      {noteLast && rows}
    </div>
  );
});

PartFields.displayName = 'PartFields';

/** A short list among the fields. */
const SimpleList = ({ path, place }: FieldProps): ReactElement => {
  const { words } = usePage();
  const { name } = useLabel(path);
  const { form, help } = place;
  return (
    <div className="frow" data-block={form.is === 'either' || undefined} data-wide>
      <span className="flabel">{name}</span>
      <span className="fvalue">
        {form.is === 'list' && <ListSection path={path} form={form} label={name} />}
        {form.is === 'either' && <PropertiesField path={path} label={name} form={form} />}
      </span>
      {words.has(help) && <span className="fhelp">{words.say(help)}</span>}
    </div>
  );
};
