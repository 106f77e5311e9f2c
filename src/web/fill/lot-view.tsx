import { type ReactElement, type ReactNode, useMemo, useState } from 'react';
import { judgeLot, type LotJudgement } from '../../fill/judge-lot.ts';
import type { Step } from '../../fill/worksheet.ts';
import { type LotRead, lotInSi, typedPlan } from '../../floor/fill/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { lotsOf, type RecordedLot } from '../../record/lots.ts';
import { type ContentsRule, contentsRules } from '../../sheets/contents/reference-temperature.ts';
import { useFindSheet } from '../sheets/sheet-context.ts';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { useKeptRecords } from '../state/kept-records.tsx';
import { keptTexts } from '../state/kept-texts.ts';
import { usePage, usePagePart, useWords } from '../state/page-context.ts';
import { SheetValue } from '../working/sheet-value.tsx';
import { useFillPlace } from './fill-place.tsx';
import { LotControl } from './lot-control-part.tsx';
import { LotForm } from './lot-form.tsx';
import { LotStrip } from './lot-strip.tsx';
import { isTable, type LotTyped, lotWithTyped } from './lot-with-typed.ts';
import { readVolume } from './read-volume.ts';
import { stepAddress } from './step-address.ts';

type Texts = { readonly rule?: ContentsRule } & LotTyped;

/** What a rule wants typed in, since no copy of it is held. */
const wantedBy = (rule: string | undefined): readonly (keyof LotTyped)[] =>
  rule === 'NIST Handbook 133'
    ? ['variation', 'tareSample', 'edition']
    : rule === 'OIML R 87'
      ? ['plan', 'edition']
      : [];

interface Judged {
  readonly read: LotRead | undefined;
  readonly judgement: LotJudgement | undefined;
  readonly problems: readonly Problem[];
}

/** The whole way to the verdict: each step a sheet with its numbers in it. */
const Worksheet = ({ steps }: { readonly steps: readonly Step[] }): ReactElement => {
  const words = useWords();
  const { say } = words;
  const findSheet = useFindSheet();
  return (
    <ol className="worksheet">
      {steps.map((step, i) => {
        const sheet = findSheet(step.sheet);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a step is named by its place
          <li key={i} data-step-sheet={step.sheet}>
            <GoLink to={stepAddress(words, step, sheet)}>{say(`sheet.${step.sheet}.title`)}</GoLink>
            <dl>
              {Object.entries(sheet?.outputs ?? {}).map(([name, field]) => {
                const value = step.outputs[name];
                // a list of a whole lot is read on the sheet
                if (value === undefined || typeof value === 'object') return null;
                return (
                  <div key={name}>
                    <dt>{say(`sheet.${step.sheet}.outputs.${name}`)}</dt>
                    <dd>
                      <SheetValue sheet={step.sheet} name={name} field={field} value={value} />
                    </dd>
                  </div>
                );
              })}
            </dl>
            {step.notes.map((note) => (
              <p className="small" key={note.code}>
                {words.note(note)}
              </p>
            ))}
          </li>
        );
      })}
    </ol>
  );
};

const Verdict = ({
  judgement,
  rule,
}: {
  readonly judgement: LotJudgement;
  readonly rule: string;
}): ReactElement => {
  const { say, problem, has } = useWords();
  const id = usePagePart((state) => state.id);
  const told = (one: Problem): string => (has(one.code) ? problem(one) : one.code);
  return (
    <>
      <p
        className={`lot-verdict ${judgement.verdict.replace(' ', '-')}`}
        role="status"
        data-verdict={judgement.verdict}
      >
        {say(`lot.verdict.${judgement.verdict.replace(' ', '-')}`, { n: judgement.more, rule })}
      </p>
      <ul className="notes">
        {[...judgement.problems, ...judgement.missing, ...judgement.remarks].map((one) => (
          <li key={one.code + one.path}>
            {told(one)}{' '}
            {one.code === 'LOT_LABEL_MISSING' && (
              <GoLink to={bookPageAddress(id, '/line/formats')}>{say('lot.label.write')}</GoLink>
            )}
          </li>
        ))}
      </ul>
    </>
  );
};

const LotAnswer = ({ lot, texts }: { readonly lot: RecordedLot; readonly texts: Texts }): ReactElement => {
  const words = useWords();
  const { say, numbers } = words;
  const id = usePagePart((state) => state.id);
  const { book } = useFillPlace();
  const { read, judgement, problems } = useMemo((): Judged => {
    const variation = readVolume(texts.variation, numbers);
    const tareSample = words.readNumber(texts.tareSample ?? '');
    const plan = typedPlan(texts.plan ?? '');
    const inSi = lotInSi(book, lot, {
      ...(texts.rule === undefined ? {} : { rule: texts.rule }),
      ...(texts.edition === undefined || texts.edition === '' ? {} : { edition: texts.edition }),
      ...(variation === undefined ? {} : { variation }),
      ...(tareSample === undefined || !(tareSample >= 1) ? {} : { tareSample: Math.round(tareSample) }),
      ...(plan === undefined ? {} : { typedPlan: plan }),
      ...(isTable(texts.table) ? { table: texts.table } : {}),
    });
    if (!inSi.ok) return { read: undefined, judgement: undefined, problems: inSi.problems };
    const { lot: plain } = inSi.value;
    return { read: inSi.value, judgement: plain && judgeLot(plain), problems: [] };
  }, [book, lot, texts, numbers, words]);
  if (problems.length > 0) {
    return (
      <ul className="notes">
        {problems.map((one) => (
          <li key={one.code + one.path}>{words.problem(one)}</li>
        ))}
      </ul>
    );
  }
  if (read?.lot === undefined || judgement === undefined) {
    return (
      <p>
        {say('lot.noRule')} <GoLink to={bookPageAddress(id, '/agreement')}>{say('lot.noRule.write')}</GoLink>
      </p>
    );
  }
  return (
    <>
      <Verdict judgement={judgement} rule={read.lot.rule} />
      <LotStrip judgement={judgement} lot={read.lot} />
      {judgement.steps.length > 0 && (
        <details open className="lot-worksheet">
          <summary>{say('lot.worksheet', { n: judgement.steps.length })}</summary>
          <Worksheet steps={judgement.steps} />
        </details>
      )}
      <LotControl judgement={judgement} lot={read.lot} />
    </>
  );
};

/** What was typed in goes with the lot, so that papers and the proof of contents judge it alike. */
const KeepTyped = ({ lot, texts }: { readonly lot: RecordedLot; readonly texts: Texts }): ReactNode => {
  const page = usePage();
  const { say } = page.words;
  const { write } = useKeptRecords();
  const [wrong, setWrong] = useState('');
  const { body, changed } = lotWithTyped(lot, texts, page.words);
  if (!changed) return null;
  const keep = (): void => {
    const head = { id: page.newId(), at: page.now(), kind: 'lot', version: 1, supersedes: lot.id };
    setWrong(write([{ ...head, body }]) ?? '');
  };
  return (
    <p>
      <button type="button" data-act="keep-typed" onClick={keep}>
        {say('lot.typed.keep')}
      </button>{' '}
      <span className="small quiet">{say('lot.typed.why')}</span>
      {wrong !== '' && <span role="alert"> {wrong}</span>}
    </p>
  );
};

/** A lot of filled bottles against the rule that was agreed, with the whole way. */
export const LotView = (): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const id = usePagePart((state) => state.id);
  const { book, floor, format } = useFillPlace();
  const { records } = useKeptRecords();
  const note = `lot-rule/${id}`;
  const [texts, setTexts] = useState<Texts>(() => {
    const { rule, ...kept } = keptTexts(page.notes.read(note));
    const known = contentsRules.find((one) => one === rule);
    return { ...kept, ...(known === undefined ? {} : { rule: known }) };
  });
  const lots = useMemo(
    () => lotsOf(records).filter((lot) => lot.floor === floor.tag && lot.format === format?.tag),
    [records, floor.tag, format?.tag],
  );
  const rule = texts.rule ?? book.agreement?.contents?.rule;
  const [chosen, setChosen] = useState<string>();
  const lot = lots.find((one) => one.id === chosen) ?? lots.at(-1);
  const change = (part: Texts): void => {
    const next = { ...texts, ...part };
    setTexts(next);
    page.notes.write(note, next);
  };
  return (
    <div className="lot-view">
      <div className="lot-rule">
        <label>
          <span>{say('lot.rule')}</span>
          <select
            data-lot="rule"
            value={texts.rule ?? ''}
            onChange={({ target }) => {
              const { rule: _, ...rest } = texts;
              const other = contentsRules.find((one) => one === target.value);
              const next = other === undefined ? rest : { ...rest, rule: other };
              setTexts(next);
              page.notes.write(note, next);
            }}
          >
            <option value="">{say('lot.rule.agreed')}</option>
            {contentsRules.map((one) => (
              <option key={one} value={one}>
                {say(`lot.rule.${one.replaceAll(' ', '-')}`)}
              </option>
            ))}
          </select>
        </label>
        {rule === 'OIML R 87' && (
          <label>
            <span>{say('lot.table')}</span>
            <select
              data-lot="table"
              value={texts.table ?? lot?.table ?? 'Australia'}
              onChange={({ target }) => change({ table: target.value })}
            >
              {(['Australia', 'New Zealand'] as const).map((one) => (
                <option key={one} value={one}>
                  {say(`sheet.contents/oiml-lot.options.table.${one}`)}
                </option>
              ))}
            </select>
          </label>
        )}
        {wantedBy(rule).map((name) => (
          <label key={name}>
            <span>{say(`lot.${name}`)}</span>
            <input
              type="text"
              data-lot={name}
              value={texts[name] ?? String(lot?.[name] ?? '')}
              onChange={({ target }) => change({ [name]: target.value })}
            />
          </label>
        ))}
        {lots.length > 1 && (
          <label>
            <span>{say('lot.which')}</span>
            <select value={lot?.id} onChange={({ target }) => setChosen(target.value)}>
              {lots.map((one, i) => (
                <option key={one.id} value={one.id}>
                  {say('lot.named', { n: i + 1, bottles: one.packages.length })}
                </option>
              ))}
            </select>
          </label>
        )}
      </div>
      {lot !== undefined && <KeepTyped lot={lot} texts={texts} />}
      {lot !== undefined && <LotAnswer lot={lot} texts={texts} />}
      {format !== undefined && <LotForm floor={floor.tag} format={format.tag} open={lot === undefined} />}
    </div>
  );
};
