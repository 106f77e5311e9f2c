import type { ReactElement } from 'react';
import type { RecordedSample } from '../../record/samples.ts';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useKeptRecords } from '../state/kept-records.tsx';
import { usePage } from '../state/page-context.ts';
import { sampleFields } from './sample-fields.ts';

/** The measured bottles as they were typed; one is taken back by a record. */
export const SampleList = ({
  samples,
}: {
  readonly samples: readonly RecordedSample[];
}): ReactElement | null => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const { write } = useKeptRecords();
  if (samples.length === 0) return null;
  const takeBack = (sample: RecordedSample): void => {
    write([
      {
        id: page.newId(),
        kind: 'note',
        version: 1,
        at: page.now(),
        supersedes: sample.id,
        body: {
          text: say('samples.takenBack.note', { bottle: sample.bottle }),
          by: sample.by ?? page.author,
        },
      },
    ]);
  };
  const used = sampleFields.filter((field) => samples.some((sample) => sample[field] !== undefined));
  return (
    <section className="fill-part">
      <h3>{say('samples.list', { n: samples.length })}</h3>
      <ScrollRegion label={say('samples.list', { n: samples.length })}>
        <table className="sample-list">
          <thead>
            <tr>
              <th scope="col">{say('samples.bottle')}</th>
              {used.map((field) => (
                <th scope="col" key={field}>
                  {say(`samples.field.${field}`)}
                </th>
              ))}
              <th scope="col">
                <span className="said">{say('weigh.column.acts')}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {samples.map((sample) => (
              <tr key={sample.id}>
                <th scope="row">{sample.bottle}</th>
                {used.map((field) => (
                  <td key={field}>{words.entryText(sample[field])}</td>
                ))}
                <td>
                  <button
                    type="button"
                    className="link"
                    aria-label={say('samples.takeBack', { bottle: sample.bottle })}
                    onClick={() => takeBack(sample)}
                  >
                    {say('weigh.takeBack')}
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
    </section>
  );
};
