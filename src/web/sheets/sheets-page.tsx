import { type ReactElement, useId, useMemo, useState } from 'react';
import { foundSheets, sheetSearchText } from '../../sheets/found-sheets.ts';
import { registry } from '../../sheets/registry.ts';
import { unverifiedOutputs } from '../../sheets/unverified-outputs.ts';
import { FieldForm } from '../field/field-form.tsx';
import { GoLink } from '../shell/go-link.tsx';
import { sheetAddress, sheetsAddress } from '../shell/route.ts';
import { useWords } from '../state/page-context.ts';

/** Every sheet by discipline, or those that somebody looks for. */
export const SheetsPage = ({ find }: { readonly find: string }): ReactElement => {
  const { say, has } = useWords();
  const field = useId();
  const [wanted, setWanted] = useState(find);
  const texts = useMemo(
    () =>
      new Map(
        [...registry.values()].map(({ sheet }) => [
          sheet.id,
          sheetSearchText(sheet, {
            title: say(`sheet.${sheet.id}.title`),
            about: say(`sheet.${sheet.id}.about`),
            outputs: Object.keys(sheet.outputs).map((name) => say(`sheet.${sheet.id}.outputs.${name}`)),
          }),
        ]),
      ),
    [say],
  );
  const found = useMemo(() => foundSheets(texts, wanted), [texts, wanted]);
  const entries = [...registry.values()].filter(({ sheet }) => found.has(sheet.id));
  const disciplines = [...new Set(entries.map(({ sheet }) => sheet.id.split('/')[0] ?? ''))];
  const type = (text: string): void => {
    setWanted(text);
    // so that a way back leads to what was found
    window.history.replaceState(null, '', sheetsAddress(text));
  };
  return (
    <div className="sheets" id="figures" tabIndex={-1}>
      <h2>{say('sheets.title')}</h2>
      <p className="quiet">{say('sheets.about')}</p>
      <FieldForm className="sheets-find">
        <label htmlFor={field}>{say('sheets.find')}</label>
        <input
          id={field}
          type="search"
          autoComplete="off"
          value={wanted}
          onChange={({ target }) => type(target.value)}
        />
      </FieldForm>
      <p role="status" className="quiet small">
        {say('sheets.found', { n: entries.length, of: registry.size })}
      </p>
      {disciplines.map((discipline) => (
        <section className="part" key={discipline}>
          <h2>
            {has(`sheets.discipline.${discipline}`) ? say(`sheets.discipline.${discipline}`) : discipline}
          </h2>
          <ul className="sheet-list">
            {entries
              .filter(({ sheet }) => sheet.id.startsWith(`${discipline}/`))
              .map(({ sheet, cases, text }) => (
                <li key={sheet.id}>
                  <GoLink to={sheetAddress(sheet.id)}>
                    <b>{say(`sheet.${sheet.id}.title`)}</b>
                    <span className="quiet small">
                      {say(`sheet.${sheet.id}.about`)}
                      {unverifiedOutputs({ sheet, cases, text }).length > 0 &&
                        ` (${say('sheets.unverified.short')})`}
                    </span>
                  </GoLink>
                </li>
              ))}
          </ul>
        </section>
      ))}
    </div>
  );
};
