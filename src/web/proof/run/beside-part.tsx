import type { ReactElement } from 'react';
import { useWords } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { AttachField } from '../media/attach-field.tsx';
import { MediaStrip } from '../media/media-strip.tsx';
import { TextField } from '../text-field.tsx';
import { InstrumentChoice } from './instrument-choice.tsx';
import type { RunText } from './run-draft.ts';
import type { Run } from './use-run.ts';

const concession: readonly RunText[] = ['why', 'until', 'accepter'];
const late: readonly RunText[] = ['what', 'who', 'due'];

/** Who tried it and who saw it, with what, and what is to be said or shown beside it. */
export const BesidePart = ({ run }: { readonly run: Run }): ReactElement => {
  const { say } = useWords();
  const says = useCheckSays();
  const { draft, problems } = run;
  const { check } = run.one;
  const field = (name: RunText, kind: 'text' | 'date' = 'text'): ReactElement => (
    <TextField
      key={name}
      name={name}
      label={say(`proving.run.text.${name}`)}
      kind={kind}
      value={draft.texts[name]}
      change={(value) => run.type(name, value)}
      problem={problems[name]}
    />
  );
  const isOpen = (names: readonly RunText[]): boolean => names.some((name) => draft.texts[name] !== '');
  return (
    <section className="proof-part run-beside" aria-labelledby="run-beside-title">
      <h3 id="run-beside-title">{say('proving.run.beside')}</h3>
      <div className="run-fields">
        {field('by')}
        {field('witness')}
        {(run.kind !== undefined || check.instrument !== undefined || check.ownInstrument !== undefined) && (
          <InstrumentChoice run={run} />
        )}
        <TextField
          name="remark"
          label={say('proving.run.text.remark')}
          rows={2}
          value={draft.texts.remark}
          change={(value) => run.type('remark', value)}
        />
      </div>
      <AttachField attached={draft.attached} change={run.attach} />
      <MediaStrip evidence={draft.evidence} of={says.name(check)} />
      <details open={isOpen(late)}>
        <summary>{say('proving.run.late')}</summary>
        <div className="run-fields">
          {field('what')}
          {field('who')}
          {field('due', 'date')}
        </div>
      </details>
      <details open={isOpen(concession)}>
        <summary>{say('proving.run.concession')}</summary>
        <p className="small quiet">{say('proving.run.concession.about')}</p>
        <div className="run-fields">
          {field('why')}
          {field('until', 'date')}
          {field('accepter')}
        </div>
      </details>
    </section>
  );
};
