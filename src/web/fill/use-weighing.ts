import { useMemo, useRef, useState } from 'react';
import { likelySlips, type Slip } from '../../fill/slips.ts';
import { bookReader } from '../../floor/book-reader.ts';
import { fillFloor } from '../../floor/fill/fill-floor.ts';
import { slipGround } from '../../floor/fill/index.ts';
import { parseQuantity } from '../../quantity/index.ts';
import { type RecordedTrial, trialsOf } from '../../record/trials.ts';
import { pressed } from '../pad/key-pad.tsx';
import { useKeptRecords } from '../state/kept-records.tsx';
import { usePage, usePagePart } from '../state/page-context.ts';
import { unitFor } from '../words/unit-choice.ts';
import { useBottleUnits } from './bottle-units.ts';
import { enteredBottle, ofPlace } from './entered.ts';
import { useFillPlace } from './fill-place.tsx';
import { type LastBottle, lastBottle, type ReadAlone } from './last-bottle.ts';
import { mendedBody } from './mended-body.ts';
import { restoredDraft } from './restored-draft.ts';
import { seenTrials } from './seen-trials.ts';
import {
  type Overflow,
  type TrialBody,
  type WeighPlace,
  type WeighProblems,
  weighBody,
} from './weigh-body.ts';
import {
  fieldsFor,
  type KeptField,
  kindOf,
  laneAfter,
  rowWith,
  type WeighDraft,
  type WeighField,
} from './weigh-draft.ts';
import { deviceName, keepWeighing, keptWeighing } from './weigh-kept.ts';

/** A bottle that waits for an answer about a slip. */
export interface Asked {
  readonly body: TrialBody;
  /** The row as it will stand once the bottle is written down. */
  readonly row: WeighDraft['row'];
  readonly slip: Slip;
}

export interface Weighing {
  readonly draft: WeighDraft;
  /** Trials of this floor and format, in their order. */
  readonly trials: readonly RecordedTrial[];
  readonly corrects: RecordedTrial | undefined;
  readonly asked: Asked | undefined;
  readonly problems: WeighProblems;
  /** What was just done, for who does not see it and who looks up. */
  readonly told: string;
  /** The last bottle that can be taken back. */
  readonly last: RecordedTrial | undefined;
  /** What the newest bottle says; absent where there is none, or it was not weighed. */
  readonly lastSays: LastBottle | undefined;
  /** Fields that still show the value of the bottle before. */
  readonly repeated: ReadonlySet<WeighField>;
  readonly active: WeighField;
  readonly unitOf: (field: WeighField) => string;
  /** Of what is filled, kg/m3; absent where it is not known. */
  readonly density: number | undefined;
  /** Mass of the contents by what stands in the fields, kg. */
  readonly net: number | undefined;
  readonly type: (field: WeighField | KeptField, text: string) => void;
  readonly press: (key: string) => void;
  readonly focus: (field: WeighField) => void;
  readonly change: (part: Partial<Omit<WeighDraft, 'texts'>>) => void;
  readonly chooseLane: (lane: string) => void;
  readonly nextRow: () => void;
  readonly finish: (overflow: Overflow | undefined) => void;
  readonly answer: (how: 'take' | 'keep' | 'leave') => void;
  readonly takeBack: (trial: RecordedTrial) => void;
  readonly correct: (trial: RecordedTrial | undefined) => void;
}

/** What a bottle does not share with the one before it. */
const ofOneBottle: readonly WeighField[] = ['gross', 'volume', 'level', 'time'];

/** Everything that happens at the scales: one bottle after the other becomes a record. */
export const useWeighing = (): Weighing => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const id = usePagePart((state) => state.id);
  const units = usePagePart((state) => state.units);
  const { floor, format, lanes, assessed, book } = useFillPlace();
  const { records, write } = useKeptRecords();
  const tags = useMemo(() => lanes.map(({ tag }) => tag), [lanes]);
  const [seen] = useState(seenTrials);
  const trials = useMemo(
    () => seen.firstSeen(trialsOf(records).filter(ofPlace(floor.tag, format?.tag))),
    [seen, records, floor.tag, format?.tag],
  );
  const scales = useMemo(() => {
    const reader = bookReader(book);
    const number = (book.floors ?? []).findIndex(({ tag }) => tag === floor.tag);
    const here = fillFloor(reader, number, format?.tag);
    const alone: ReadAlone = new Map();
    return { reader, here, ground: slipGround(reader, here), alone };
  }, [book, floor.tag, format?.tag]);
  const { ground } = scales;
  const lastSays = useMemo(
    () => lastBottle(scales.reader, scales.here, trials, scales.alone),
    [scales, trials],
  );
  const small = useBottleUnits();
  const of = { book: id, floor: floor.tag, format: format?.tag };
  const presetOf = (lane: string): string => {
    const last = trials.findLast((trial) => trial.lane === lane)?.preset;
    const preset = last ?? assessed?.lanes.find((one) => one.lane === lane)?.preset;
    return preset === undefined || preset < 1 ? '' : String(preset);
  };
  const [draft, setDraft] = useState<WeighDraft>(() => {
    const kept = keptWeighing(page, of, tags[0] ?? '', small.mass === 'oz' ? 'lb' : 'kg');
    const lane = tags.includes(kept.lane) ? kept.lane : (tags[0] ?? '');
    const preset = kept.texts.preset === '' ? presetOf(lane) : kept.texts.preset;
    return { ...kept, lane, texts: { ...kept.texts, preset } };
  });
  const [active, setActive] = useState<WeighField>(fieldsFor(draft.measure)[0] ?? 'gross');
  const [repeated, setRepeated] = useState<ReadonlySet<WeighField>>(new Set(['tare', 'preset']));
  const [corrects, setCorrects] = useState<RecordedTrial>();
  const [asked, setAsked] = useState<Asked>();
  const [tried, setTried] = useState(false);
  const [told, setTold] = useState('');
  const written = useRef<string[]>([]);
  const unitOf = (field: WeighField): string => {
    if (field === 'preset') return say('weigh.pulses');
    const kind = kindOf[field];
    if (kind === 'mass') return draft.massUnit;
    if (field === 'level') return small.length;
    if (field === 'volume') return small.volume;
    return (
      unitFor(
        kind,
        1,
        units,
        (book.about?.units ?? {}) as Readonly<Record<string, string>>,
        book.about?.system,
      ) ?? ''
    );
  };
  const weighPlace: WeighPlace = {
    floor: floor.tag,
    format: format?.tag,
    lanes: tags,
    unitOf,
    device: deviceName(page),
  };
  const set = (next: WeighDraft): void => {
    setDraft(next);
    keepWeighing(page, of, next);
  };
  const typed = (field: WeighField | KeptField, text: string): void => {
    set({ ...draft, texts: { ...draft.texts, [field]: text } });
    setRepeated((before) => new Set([...before].filter((one) => one !== field)));
  };
  const mass = (field: 'gross' | 'tare'): number | undefined => {
    const text = draft.texts[field].trim();
    if (text === '') return undefined;
    const whole = /[a-z]/i.test(text) ? text : `${text} ${draft.massUnit}`;
    const read = parseQuantity(whole, 'mass', { path: field, locale: words.numbers });
    return read.ok ? read.value.value : undefined;
  };
  const [gross, tare] = [mass('gross'), mass('tare')];
  const checked = tried ? weighBody(words, draft, weighPlace, undefined) : undefined;
  const problems = checked !== undefined && 'problems' in checked ? checked.problems : {};

  /** The fields for the bottle of a lane: what is measured anew is empty, the rest stays. */
  const readyFor = (lane: string, from: WeighDraft): WeighDraft => ({
    ...from,
    lane,
    texts: {
      ...from.texts,
      ...Object.fromEntries(ofOneBottle.map((field) => [field, ''])),
      preset: lane === from.lane && corrects === undefined ? from.texts.preset : presetOf(lane),
    },
  });
  const begin = (next: WeighDraft): void => {
    set(next);
    setActive(fieldsFor(next.measure)[0] ?? 'gross');
    setRepeated(new Set(['tare', 'preset'] as const));
    setTried(false);
  };
  const put = (body: TrialBody, row: WeighDraft['row']): void => {
    const fresh = page.newId();
    const wrong = write([
      {
        id: fresh,
        kind: 'trial',
        version: 2,
        at: page.now(),
        body,
        ...(corrects === undefined ? {} : { supersedes: corrects.id }),
      },
    ]);
    setAsked(undefined);
    if (wrong !== undefined) {
      setTold(wrong);
      return;
    }
    written.current = [...written.current, fresh];
    setTold(
      say(corrects === undefined ? 'weigh.told.kept' : 'weigh.told.corrected', {
        lane: body.lane,
        what: body.gross ?? body.volume ?? body.level ?? '',
      }),
    );
    if (corrects !== undefined) {
      setCorrects(undefined);
      begin(readyFor(laneAfter(tags, draft.row.lanes.at(-1) ?? tags.at(-1) ?? ''), draft));
      return;
    }
    begin(readyFor(laneAfter(tags, body.lane), { ...draft, row, lane: body.lane }));
  };
  const finish = (overflow: Overflow | undefined): void => {
    setTried(true);
    const row = corrects === undefined ? rowWith(draft.row, tags, draft.lane) : draft.row;
    const made = weighBody(words, { ...draft, row }, weighPlace, overflow);
    if ('problems' in made) {
      setTold(Object.values(made.problems).join(' '));
      return;
    }
    const body = corrects?.row === undefined ? made.body : { ...made.body, row: corrects.row };
    const others = trials.filter((trial) => trial.id !== corrects?.id).map(seen.bottleOf);
    const [slip] = likelySlips(enteredBottle(body), others, ground);
    if (slip === undefined) put(body, row);
    else setAsked({ body, row, slip });
  };
  const answer = (how: 'take' | 'keep' | 'leave'): void => {
    if (asked === undefined) return;
    const { body, row, slip } = asked;
    if (how === 'leave') setAsked(undefined);
    else put(how === 'keep' ? body : mendedBody(body, slip, draft.massUnit), row);
  };
  const takeBack = (trial: RecordedTrial): void => {
    const wrong = write([
      {
        id: page.newId(),
        kind: 'note',
        version: 1,
        at: page.now(),
        supersedes: trial.id,
        body: {
          text: say('weigh.takenBack.note', { lane: trial.lane, preset: trial.preset }),
          by: draft.texts.by.trim() || trial.by || say('page.author'),
        },
      },
    ]);
    setTold(
      wrong ??
        say('weigh.told.takenBack', {
          lane: trial.lane,
          what: trial.gross ?? trial.volume ?? trial.level ?? '',
        }),
    );
    if (corrects?.id === trial.id) setCorrects(undefined);
    // what was typed comes back, so that only the slip is mended
    if (wrong === undefined)
      restore(trial, { ...draft.row, lanes: draft.row.lanes.filter((lane) => lane !== trial.lane) });
  };
  const restore = (trial: RecordedTrial, row: WeighDraft['row']): void => {
    const next = { ...restoredDraft(draft, trial, unitOf), row };
    set(next);
    setRepeated(new Set());
    setActive(fieldsFor(next.measure)[0] ?? 'gross');
    setTried(false);
  };
  return {
    draft,
    trials,
    corrects,
    asked,
    problems,
    told,
    last: trials.findLast((trial) => written.current.includes(trial.id)),
    lastSays,
    repeated,
    active,
    unitOf,
    density: ground.density,
    net: gross === undefined || tare === undefined ? undefined : gross - tare,
    type: typed,
    press: (key) => {
      const before = repeated.has(active) ? '' : draft.texts[active];
      typed(active, pressed(before, key));
    },
    focus: setActive,
    change: (part) => set({ ...draft, ...part }),
    chooseLane: (lane) => begin({ ...readyFor(lane, draft) }),
    nextRow: () => {
      const next = { ...draft, row: { number: draft.row.number + 1, lanes: [] } };
      begin(readyFor(tags[0] ?? draft.lane, next));
    },
    finish,
    answer,
    takeBack,
    correct: (trial) => {
      setCorrects(trial);
      setTold('');
      if (trial === undefined) begin(readyFor(draft.lane, draft));
      else restore(trial, draft.row);
    },
  };
};
