import { type ReactElement, useState } from 'react';
import { runSheet, type Value } from '../../sheets/frame.ts';
import { problemsAsTyped } from '../../sheets/problems-as-typed.ts';
import { registry } from '../../sheets/registry.ts';
import { unverifiedOutputs } from '../../sheets/unverified-outputs.ts';
import { GoLink } from '../shell/go-link.tsx';
import { sheetAddress } from '../shell/route.ts';
import { useWords } from '../state/page-context.ts';
import { Formula } from '../working/formula.tsx';
import { SheetValue } from '../working/sheet-value.tsx';
import { sourceText } from '../working/working-body.tsx';
import { readSheetText } from './read-sheet-text.ts';
import { SheetEvidence } from './sheet-evidence.tsx';
import { SheetField } from './sheet-field.tsx';

type Texts = Readonly<Record<string, string>>;

/** One sheet: formula, what goes in in any unit, what comes out as one types, limits, sources, evidence. */
export const SheetPage = ({ id, inputs }: { readonly id: string; readonly inputs: Texts }): ReactElement => {
  const words = useWords();
  const { say } = words;
  const entry = registry.get(id);
  const [texts, setTexts] = useState<Texts>(inputs);
  if (entry === undefined) return <p className="message">{say('sheets.missing')}</p>;
  const { sheet } = entry;
  const unverified = unverifiedOutputs(entry);
  const locale = words.numbers;
  const read = Object.entries(sheet.inputs).map(([name, field]) => ({
    name,
    field,
    result: readSheetText(name, field, texts[name] ?? '', locale),
  }));
  const values: Record<string, Value> = {};
  for (const { name, result } of read) {
    if (result.ok && result.value !== undefined) values[name] = result.value;
  }
  const run = runSheet(sheet, values);
  const problems = [
    ...read.flatMap(({ result }) => (result.ok ? [] : result.problems)),
    // a field that is still empty is no mistake yet
    ...(run.ok
      ? []
      : problemsAsTyped(
          run.problems.filter(({ code }) => code !== 'SHEET_INPUT_MISSING'),
          sheet,
          texts,
          { byKind: {} },
          locale,
        )),
  ];
  const outputs = run.ok ? (run.value.outputs as Readonly<Record<string, Value>>) : {};
  const type = (name: string, text: string): void => {
    const next = { ...texts, [name]: text };
    setTexts(next);
    const kept = Object.fromEntries(Object.entries(next).filter(([, value]) => value !== ''));
    window.history.replaceState(null, '', sheetAddress(id, kept));
  };
  const at = (name: string) =>
    problems.find(({ path }) => path === name || path.startsWith(`${name}/`) || path.startsWith(`${name}[`));
  const placed = new Set(Object.keys(sheet.inputs).map(at));
  return (
    <div className="sheets" id="figures" tabIndex={-1}>
      <GoLink to="/sheets">{say('sheets.back')}</GoLink>
      <h2>{say(`sheet.${id}.title`)}</h2>
      <p>{say(`sheet.${id}.about`)}</p>
      <Formula lines={sheet.formula} />
      <div className="sheet-columns">
        <section aria-label={say('working.inputs')}>
          <h3>{say('working.inputs')}</h3>
          <p className="small quiet">{say('sheets.compute')}</p>
          <dl className="inputs">
            {read.map(({ name, field }) => (
              <SheetField
                key={name}
                sheet={id}
                name={name}
                field={field}
                text={texts[name] ?? ''}
                problem={at(name)}
                onType={(text) => type(name, text)}
              />
            ))}
          </dl>
          {problems
            .filter((problem) => !placed.has(problem))
            .map((problem) => (
              <p className="small" key={problem.code + problem.path} role="alert">
                {words.problem(problem)}
              </p>
            ))}
        </section>
        <section aria-label={say('working.outputs')} aria-live="polite">
          <h3>{say('working.outputs')}</h3>
          <dl className="inputs">
            {Object.entries(sheet.outputs).map(([name, field]) => (
              <div className="result" key={name}>
                <dt>
                  {say(`sheet.${id}.outputs.${name}`)}
                  {unverified.includes(name) && (
                    <span className="quiet small"> {say('sheets.unverified.short')}</span>
                  )}
                </dt>
                <dd data-output={name}>
                  {outputs[name] === undefined ? (
                    <span className="quiet">{say('sheets.waiting')}</span>
                  ) : (
                    <SheetValue sheet={id} name={name} field={field} value={outputs[name]} />
                  )}
                </dd>
              </div>
            ))}
          </dl>
          {run.ok && run.value.notes.length > 0 && (
            <ul className="notes">
              {run.value.notes.map((note) => (
                <li key={note.code}>{words.note(note)}</li>
              ))}
            </ul>
          )}
        </section>
      </div>
      <SheetEvidence entry={entry} />
      <ul className="sources">
        {sheet.sources.map((source) => (
          <li key={source.title + (source.place ?? '')}>{sourceText(words, source)}</li>
        ))}
        <li>{say('sheets.version', { version: sheet.version })}</li>
      </ul>
    </div>
  );
};
