import { type ReactElement, useEffect, useRef, useState } from 'react';
import type { Finding, Remedy } from '../../floor/assessment.ts';
import { putBack, tryRemedy } from '../commands/try-remedy.ts';
import { figureName } from '../floors/verdict-text.ts';
import type { RemedySearch } from '../state/page.ts';
import { usePage, usePageState } from '../state/page-context.ts';
import { CostFields } from './cost-fields.tsx';
import {
  type CostField,
  costFields,
  keepCost,
  type RemedyCost,
  readCosts,
  remediesInOrder,
} from './remedy-costs.ts';

/** The search begins when the typing rests. */
const rest = 250;

const nothing = (): void => undefined;

type Search = RemedySearch | 'failed' | 'cancelled';

const begun: Search = { found: [], done: false };

const useRemedies = (floor: string, finding: string, wanted: boolean) => {
  const page = usePage();
  const { book, typing } = usePageState();
  const [search, setSearch] = useState<Search>(begun);
  const [round, setRound] = useState(0);
  const stopping = useRef<() => void>(nothing);
  const base = typing?.book ?? book;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new round is a new search of the same question
  useEffect(() => {
    if (!wanted || base === undefined) return undefined;
    setSearch(begun);
    const timer = setTimeout(() => {
      stopping.current = page.solveRemedies({ book: base, floor, finding }, setSearch);
    }, rest);
    return () => {
      clearTimeout(timer);
      stopping.current();
      stopping.current = nothing;
    };
  }, [page, base, floor, finding, wanted, round]);
  const giveUp = (): void => {
    stopping.current();
    setSearch('cancelled');
  };
  return { search, again: () => setRound(round + 1), giveUp };
};

/** Levers that turn several places at once. */
const whole = new Set(['runBore', 'laneKv', 'presets', 'nozzleBore', 'closing']);

interface OneProps {
  readonly remedy: Remedy;
  readonly cost: RemedyCost | undefined;
  readonly onCost: (field: CostField, text: string) => void;
}

const One = ({ remedy, cost, onCost }: OneProps): ReactElement => {
  const page = usePage();
  const { trial, book } = usePageState();
  const { words } = page;
  const on =
    trial?.lever === remedy.lever && trial.floor === remedy.floor && trial.finding === remedy.finding;
  const lever = book === undefined ? remedy.lever : words.leverName(book, remedy);
  const answer = words.remedyAnswer(remedy);
  const next = remedy.nextSmaller;
  // a lever of the whole run stands at no single piece of it
  const place = book === undefined || whole.has(remedy.lever) ? '' : words.thingName(book, remedy.path);
  return (
    <li className={on ? 'remedy on' : 'remedy'} data-lever={remedy.lever}>
      <span>
        {lever}
        {remedy.patch.length > 0 && (
          <>
            {' '}
            <b>{answer}</b>
          </>
        )}
      </span>
      {remedy.patch.length > 0 &&
        (on ? (
          <button type="button" onClick={() => putBack(page)}>
            {words.say('remedies.putBack')}
          </button>
        ) : (
          <button
            type="button"
            aria-label={words.say('remedies.tryWhat', { lever, answer })}
            onClick={() => tryRemedy(page, remedy)}
          >
            {words.say('remedies.try')}
          </button>
        ))}
      <span className="quiet">
        {place !== '' && <span className="place">{place}</span>}
        {remedy.patch.length === 0
          ? words.say('remedies.no')
          : next !== undefined &&
            (next.margin === undefined
              ? words.say('remedies.next.unknown', { text: next.text })
              : words.say(next.margin >= 0 ? 'remedies.next.narrow' : 'remedies.next', {
                  text: next.text,
                  percent: words.percent(Math.abs(next.margin)),
                }))}
      </span>
      {remedy.breaks.length > 0 && (
        <span className="short">
          {words.say('remedies.breaks', {
            what: remedy.breaks
              .map((harm) =>
                words.say('remedies.breaksOne', {
                  finding: figureName(words, harm.finding),
                  floor: book?.floors?.find((each) => each.tag === harm.floor)?.name ?? harm.floor,
                  verdict: words.say(`verdict.${harm.verdict}`),
                }),
              )
              .join(', '),
          })}
        </span>
      )}
      {remedy.patch.length > 0 && <CostFields cost={cost} lever={lever} onCost={onCost} />}
    </li>
  );
};

/** What would carry a finding: solved answers, each of which can be tried with one press and put back. */
export const Remedies = ({
  floor,
  finding,
}: {
  readonly floor: string;
  readonly finding: Finding;
}): ReactElement => {
  const page = usePage();
  const { trial, book, id } = usePageState();
  const { say } = page.words;
  const [costs, setCosts] = useState(() => readCosts(page.notes, id));
  const [by, sortBy] = useState<CostField>();
  // a finding that the trial carries keeps its list, or what is on trial could not be put back from here
  const onTrial = trial !== undefined && trial.floor === floor && trial.finding === finding.id;
  const wanted = finding.verdict !== 'carries' || onTrial;
  const { search, again, giveUp } = useRemedies(floor, finding.id, wanted && book !== undefined);
  return (
    <section aria-label={say('remedies.title')}>
      <h3>{say('remedies.title')}</h3>
      {!wanted && <p className="quiet">{say('remedies.carries')}</p>}
      {wanted && typeof search !== 'string' && search.found.length > 1 && Object.keys(costs).length > 0 && (
        <select
          aria-label={say('remedies.sort')}
          value={by ?? ''}
          onChange={({ target }) => sortBy(costFields.find((field) => field === target.value))}
        >
          <option value="">{say('remedies.sort.none')}</option>
          {costFields.map((field) => (
            <option key={field} value={field}>
              {say('remedies.sort.by', { name: say(`field.${field}`) })}
            </option>
          ))}
        </select>
      )}
      {wanted && typeof search !== 'string' && (
        <ul>
          {remediesInOrder(search.found, costs, by).map((remedy) => (
            <One
              key={remedy.lever + remedy.path}
              remedy={remedy}
              cost={costs[remedy.lever]}
              onCost={(field, text) => setCosts(keepCost(page.notes, id, remedy.lever, field, text))}
            />
          ))}
        </ul>
      )}
      {wanted && typeof search !== 'string' && !search.done && (
        <p className="quiet" role="status">
          {say('remedies.solving')}{' '}
          <button type="button" className="link" onClick={giveUp}>
            {say('remedies.cancel')}
          </button>
        </p>
      )}
      {wanted && typeof search === 'string' && (
        <p className="quiet" role="status">
          {say(`remedies.${search}`)}{' '}
          <button type="button" className="link" onClick={again}>
            {say('remedies.again')}
          </button>
        </p>
      )}
      {wanted && typeof search !== 'string' && search.done && search.found.length === 0 && (
        <p className="quiet">{say('remedies.none')}</p>
      )}
    </section>
  );
};
