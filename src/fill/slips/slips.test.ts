import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EnteredBottle, likelySlips, type SlipGround, slipsAmong } from '../slips.ts';

/** Four lanes of a filler for two litres, as invented for the demonstration. */
const lanes = [
  { tag: '-Y11', pulses: 402e3, preset: 803, time: 11.6 },
  { tag: '-Y12', pulses: 399e3, preset: 796, time: 12.1 },
  { tag: '-Y13', pulses: 404e3, preset: 807, time: 11.3 },
  { tag: '-Y14', pulses: 401e3, preset: 799, time: 12.9 },
] as const;
const ground: SlipGround = { lanes, density: 999.5, emptyMass: 0.96, level: 2.01e-3 };
type Lane = (typeof lanes)[number];

/** Contents by the pulses and 12 mL of after-run, kg. */
const contents = ({ pulses }: Lane, preset: number): number => 999.5 * (preset / pulses + 12e-6);
const kilograms = (value: number) => ({ value, typed: value.toFixed(4) });
const bottleOf = (lane: Lane, noise = 0, more: Partial<EnteredBottle> = {}): EnteredBottle => {
  const preset = more.preset ?? lane.preset;
  return {
    lane: lane.tag,
    preset,
    gross: kilograms(0.96 + contents(lane, preset) * (1 + noise)),
    tare: kilograms(0.96),
    time: {
      value: (lane.time * preset) / lane.preset,
      typed: ((lane.time * preset) / lane.preset).toFixed(1),
    },
    ...more,
  };
};
/** Three good rows, a thousandth apart. */
const good = [-1e-3, 0, 1e-3].flatMap((noise) => lanes.map((lane) => bottleOf(lane, noise)));
const first = bottleOf(lanes[0]);
const asked = (bottle: EnteredBottle, others: readonly EnteredBottle[] = good) =>
  likelySlips(bottle, others, ground).map(({ code, field, likely }) => [code, field, likely]);
const entered = (value: number) => ({ value, typed: String(value) });

describe('a likely slip at entry', () => {
  it('is a tare forgotten, with that of the other bottles as what was meant', () => {
    const { tare: _, ...without } = first;
    expect(asked(without)).toEqual([['tareForgotten', 'tare', 0.96]]);
    expect(asked({ ...first, tare: entered(0) })).toEqual([['tareForgotten', 'tare', 0.96]]);
    // with no other bottle the book says what an empty one has
    expect(asked(without, [])).toEqual([['tareForgotten', 'tare', 0.96]]);
    // a balance that was set to nought shows the contents alone
    const net = { ...first, gross: entered(2.0085), tare: entered(0) };
    expect(asked(net)).toEqual([]);
  });

  it('is a gross that has the bottle already taken off', () => {
    expect(asked({ ...first, gross: entered(2.0085) })[0]?.slice(0, 2)).toEqual(['alreadyNet', 'gross']);
  });

  it('is gross and tare in each other’s place', () => {
    const swapped = { ...first, gross: first.tare!, tare: first.gross! };
    expect(asked(swapped)).toEqual([['grossTareSwapped', 'gross', first.gross!.value]]);
  });

  it('is two digits turned round, in the unit that was typed', () => {
    expect(asked({ ...first, gross: entered(2.698) })[0]).toEqual(['digitsTurned', 'gross', 2.968]);
    // 6.543 lb typed as 6.453 lb
    const pounds = { value: 6.453 * 0.45359237, typed: '6.453' };
    const [code, field, likely] = asked({ ...first, gross: pounds })[0]!;
    expect([code, field]).toEqual(['digitsTurned', 'gross']);
    expect(likely as number).toBeCloseTo(6.543 * 0.45359237, 9);
    expect(asked({ ...first, tare: entered(0.69) })[0]).toEqual(['digitsTurned', 'tare', 0.96]);
    expect(asked({ ...first, preset: 830 })).toContainEqual(['digitsTurned', 'preset', 803]);
  });

  it('is another unit of mass or time', () => {
    expect(asked({ ...first, gross: entered(2968) })[0]).toEqual(['massUnit', 'gross', 2.968]);
    expect(asked({ ...first, gross: entered(0.002968) })[0]).toEqual(['massUnit', 'gross', 2.968]);
    // 6.543 on a balance of pounds, written down as kilograms
    const [code, , likely] = asked({ ...first, gross: entered(6.543) })[0]!;
    expect(code).toBe('massUnit');
    expect(likely as number).toBeCloseTo(2.968, 3);
    expect(asked({ ...first, time: entered(0.1933) })[0]?.slice(0, 2)).toEqual(['timeUnit', 'time']);
    expect(asked({ ...first, time: entered(11600) })[0]).toEqual(['timeUnit', 'time', 11.6]);
  });

  it('is a decimal point one place off', () => {
    expect(asked({ ...first, gross: entered(29.68) })[0]?.slice(0, 2)).toEqual(['decimalPoint', 'gross']);
    expect(asked({ ...first, time: entered(1.16) })[0]).toEqual(['decimalPoint', 'time', 11.6]);
    expect(asked({ ...first, preset: 8030 })).toContainEqual(['decimalPoint', 'preset', 803]);
  });

  it('is the count of another lane', () => {
    const rows = Array.from({ length: 4 }, (_, i) => lanes.map((lane) => bottleOf(lane, i * 2e-4))).flat();
    const bottle = { ...bottleOf(lanes[2]), preset: 796 };
    expect(asked(bottle, rows)).toContainEqual(['neighbourPreset', 'preset', 807]);
  });

  it('is the lane, where mass and time are those of another', () => {
    const throttled = lanes.map((lane, i) => ({ ...lane, preset: lane.preset + 60 * i, time: 11 + 2 * i }));
    const rows = [-1e-3, 0, 1e-3].flatMap((noise) => throttled.map((lane) => bottleOf(lane as Lane, noise)));
    const other = bottleOf(throttled[3] as unknown as Lane);
    expect(asked({ ...other, lane: '-Y12', preset: throttled[1]!.preset }, rows)).toContainEqual([
      'laneSwapped',
      'lane',
      '-Y14',
    ]);
  });

  it('says with what the value was compared', () => {
    const [slip] = likelySlips({ ...first, gross: entered(2.698) }, good, ground);
    expect(slip?.compared).toMatchObject({ of: 'net', bottles: 3 });
    expect(slip!.compared.given).toBeCloseTo(1.738, 6);
    expect(slip!.compared.expected).toBeCloseTo(contents(lanes[0], 803), 3);
  });

  it('is a value far from all others even where nobody can guess why', () => {
    expect(asked({ ...first, gross: entered(2.355) })).toEqual([['unlikeOthers', 'gross', undefined]]);
  });
});

describe('good bottles', () => {
  const noise = fc.double({ min: -1, max: 1, noNaN: true });

  it('are not questioned for their own spread, other counts or an overflow', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ lane: fc.nat(3), n: noise, t: noise, step: fc.nat(4), over: fc.nat(5) }), {
          minLength: 4,
          maxLength: 40,
        }),
        (rows) => {
          const bottles = rows.map(({ lane, n, t, step, over }): EnteredBottle => {
            const own = lanes[lane]!;
            const preset = Math.round(own.preset * (0.85 + 0.04 * step));
            // two thousandths of contents and two tenths of a second: a filler in order, a watch by hand
            const bottle = bottleOf(own, 2e-3 * n, { preset });
            const time = bottle.time!.value + 0.2 * t;
            const stopped = { ...bottle, time: { value: time, typed: time.toFixed(1) } };
            return over > 0 ? stopped : { ...stopped, overflow: 'trace', gross: kilograms(2.971 + 2e-3 * n) };
          });
          expect(slipsAmong(bottles, ground)).toEqual([]);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('are not questioned where a valve that shuts late adds a tenth to each of two counts', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ lane: fc.nat(3), n: noise, low: fc.boolean() }), { maxLength: 30 }),
        (rows) => {
          const bottles = rows.map(({ lane, n, low }): EnteredBottle => {
            const own = lanes[lane]!;
            const preset = Math.round(own.preset * (low ? 0.75 : 0.9));
            const net = (contents(own, preset) + 0.15) * (1 + 2e-3 * n);
            return { lane: own.tag, preset, gross: kilograms(0.96 + net), tare: kilograms(0.96) };
          });
          expect(slipsAmong(bottles, ground)).toEqual([]);
        },
      ),
    );
  });

  it('are never what is proposed in the place of a good one: every likely value is another', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 40, noNaN: true }), (gross) => {
        for (const { entered: from, likely } of likelySlips(
          { ...first, gross: entered(gross) },
          good,
          ground,
        )) {
          expect(likely).not.toBe(from);
        }
      }),
    );
  });

  it('among which one digit is turned are questioned at that one bottle alone', () => {
    fc.assert(
      fc.property(fc.nat(11), (at) => {
        const bottles = good.map((bottle, i) =>
          i === at
            ? { ...bottle, gross: entered(Number(bottle.gross!.typed!.replace(/(\d)\.(\d)/, '$2.$1'))) }
            : bottle,
        );
        expect(slipsAmong(bottles, ground).map(({ bottle }) => bottle)).toEqual([at]);
      }),
    );
  });
});
