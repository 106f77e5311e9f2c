import { type FormEvent, type ReactElement, useId, useState } from 'react';
import { parseQuantity } from '../../quantity/index.ts';
import { useKeptRecords } from '../state/kept-records.tsx';
import { keptFields, keptTexts } from '../state/kept-texts.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { useBottleUnits } from './bottle-units.ts';
import { useFillPlace } from './fill-place.tsx';
import { ImportPart } from './import-part.tsx';

interface LotDraft {
  readonly packages: readonly { readonly gross: string; readonly lane?: string }[];
  readonly texts: Readonly<Record<string, string>>;
}

const fields = ['size', 'tares', 'density', 'temperature', 'resolution', 'by'] as const;
const bare = /^[+\-\u2212]?[\d.,\s]+$/;
const reader = 'reading-by';

/** The bottles of a lot, one after the other over the scales, then written down as one record. */
export const LotForm = ({
  floor,
  format,
  open,
}: {
  readonly floor: string;
  readonly format: string;
  readonly open: boolean;
}): ReactElement => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const id = useId();
  const book = usePagePart((state) => state.id);
  const { lanes } = useFillPlace();
  const { write } = useKeptRecords();
  const small = useBottleUnits();
  const kilo = small.mass === 'oz' ? 'lb' : 'kg';
  const units: Readonly<Record<string, string>> = {
    density: 'kg/L',
    temperature: small.temperature.replace('deg', '°'),
    tares: kilo,
    resolution: small.mass,
  };
  const note = `lot/${book}/${floor}/${format}`;
  const [draft, setDraft] = useState<LotDraft>(() => {
    const kept = keptFields(page.notes.read(note));
    const by = page.notes.read(reader);
    const packages = Array.isArray(kept.packages) ? kept.packages.map(keptTexts) : [];
    return {
      packages: packages.flatMap(({ gross, lane }) =>
        gross === undefined ? [] : [{ gross, ...(lane === undefined ? {} : { lane }) }],
      ),
      texts: { by: typeof by === 'string' ? by : '', lane: '', ...keptTexts(kept.texts) },
    };
  });
  const [told, setTold] = useState('');
  const text = (name: string): string => draft.texts[name] ?? '';
  const set = (next: LotDraft): void => {
    setDraft(next);
    page.notes.write(note, next);
  };
  const change = (name: string, value: string): void =>
    set({ ...draft, texts: { ...draft.texts, [name]: value } });
  const withUnit = (name: string, unit: string): string => {
    const typed = text(name).trim();
    return bare.test(typed) ? `${typed.replace(/(\d),(\d)/, '$1.$2')} ${unit}` : typed;
  };
  const add = (event: FormEvent): void => {
    event.preventDefault();
    const gross = withUnit('gross', kilo);
    const read = parseQuantity(gross, 'mass', { path: 'gross' });
    if (!read.ok) {
      setTold(read.problems.map(words.problem).join(' '));
      return;
    }
    const lane = text('lane');
    const next = lanes[(lanes.findIndex(({ tag }) => tag === lane) + 1) % lanes.length]?.tag ?? '';
    set({
      packages: [...draft.packages, { gross, ...(lane === '' ? {} : { lane }) }],
      // bottles are drawn lane by lane, where somebody began to say which
      texts: { ...draft.texts, gross: '', ...(lane === '' ? {} : { lane: next }) },
    });
    setTold(say('lot.told.added', { n: draft.packages.length + 1 }));
  };
  const send = (): void => {
    const by = text('by').trim();
    if (by === '') {
      setTold(say('weigh.missing.by'));
      return;
    }
    const size = words.readNumber(text('size'));
    const tares = text('tares')
      .split(';')
      .map((one) => one.trim())
      .filter((one) => one !== '')
      .map((one) => (bare.test(one) ? `${one} ${kilo}` : one));
    const optional = (name: string, unit: string) => {
      const typed = withUnit(name, unit);
      return typed === '' ? {} : { [name]: typed };
    };
    const wrong = write([
      {
        id: page.newId(),
        kind: 'lot',
        version: 1,
        at: page.now(),
        body: {
          floor,
          format,
          packages: draft.packages,
          by,
          ...(size === undefined ? {} : { size: Math.round(size) }),
          ...(tares.length === 0 ? {} : { tares }),
          ...optional('density', 'kg/L'),
          ...optional('temperature', small.temperature),
          ...optional('resolution', small.mass),
        },
      },
    ]);
    if (wrong !== undefined) {
      setTold(wrong);
      return;
    }
    page.notes.write(reader, by);
    set({ packages: [], texts: { ...draft.texts, gross: '' } });
    setTold(say('lot.told.kept', { n: draft.packages.length }));
  };
  return (
    <details className="lot-form" open={open || draft.packages.length > 0 || undefined}>
      <summary>{say('lot.form')}</summary>
      <p className="small quiet">{say('lot.form.about')}</p>
      <form onSubmit={add} className="lot-add">
        <label htmlFor={`${id}g`}>
          <span>
            {say('weigh.field.gross')} <span className="unit">{kilo}</span>
          </span>
          <input
            id={`${id}g`}
            type="text"
            inputMode="decimal"
            data-lot="gross"
            autoComplete="off"
            value={text('gross')}
            onChange={({ target }) => change('gross', target.value)}
          />
        </label>
        <label htmlFor={`${id}l`}>
          <span>{say('weigh.lane')}</span>
          <select id={`${id}l`} value={text('lane')} onChange={({ target }) => change('lane', target.value)}>
            <option value="">{say('lot.lane.none')}</option>
            {lanes.map(({ tag }) => (
              <option key={tag} value={tag}>
                {tag}
              </option>
            ))}
          </select>
        </label>
        <button type="submit">{say('lot.add')}</button>
      </form>
      {draft.packages.length > 0 && (
        <p className="lot-drawn">
          {say('lot.drawn', { n: draft.packages.length })}{' '}
          {draft.packages
            .map(({ gross, lane }) => (lane === undefined ? gross : `${lane} ${gross}`))
            .join('; ')}{' '}
          <button
            type="button"
            className="link"
            onClick={() => set({ ...draft, packages: draft.packages.slice(0, -1) })}
          >
            {say('lot.last.away')}
          </button>
        </p>
      )}
      <div className="holds-fields">
        {fields.map((name) => (
          <label key={name} htmlFor={`${id}${name}`}>
            <span>
              {say(`lot.field.${name}`)}
              {units[name] !== undefined && <span className="unit"> {units[name]}</span>}
            </span>
            <input
              id={`${id}${name}`}
              type="text"
              data-lot={name}
              autoComplete="off"
              value={text(name)}
              onChange={({ target }) => change(name, target.value)}
            />
          </label>
        ))}
      </div>
      <p className="answers-acts">
        <button type="button" disabled={draft.packages.length === 0} onClick={send} data-act="write-lot">
          {say('lot.write', { n: draft.packages.length })}
        </button>
      </p>
      <p role="status">{told}</p>
      <ImportPart what="lot" />
    </details>
  );
};
