import type { ReactElement } from 'react';
import { registry } from '../../sheets/registry.ts';
import { unverifiedOutputs } from '../../sheets/unverified-outputs.ts';
import { GoLink } from '../shell/go-link.tsx';
import { sheetAddress } from '../shell/route.ts';
import { useWords } from '../state/page-context.ts';

/** Every sheet by discipline. */
export const SheetsPage = (): ReactElement => {
  const { say, has } = useWords();
  const entries = [...registry.values()];
  const disciplines = [...new Set(entries.map(({ sheet }) => sheet.id.split('/')[0] ?? ''))];
  return (
    <div className="sheets" id="figures" tabIndex={-1}>
      <h2>{say('sheets.title')}</h2>
      <p className="quiet">{say('sheets.about')}</p>
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
