import { dryerChoiceSheet } from '../../../sheets/air/dryer-choice.ts';
import { intakeDewPointSheet } from '../../../sheets/air/intake-dew-point.ts';
import {
  type AskedClass,
  type GivenClass,
  treatmentChainSheet,
} from '../../../sheets/air/treatment-chain.ts';
import { waterClassSheet } from '../../../sheets/air/water-class.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { Answer } from '../need.ts';
import { receiverLow } from './drop-pressure.ts';
import { airTemperature, atmosphereHere } from './site-air.ts';

/** What each kind of dryer reaches where nobody gave its dew point: refrigeration ends over freezing; the other from memory. */
const usualDewPoint = { refrigerated: 276.15, desiccant: 233.15, membrane: 253.15 } as const;
/** A damp room, where nobody said how damp; common practice. */
const usualHumidity = 0.6;

/** Temperature and humidity of what the compressor takes in. */
export const intakeState = (c: Calculation): { readonly temperature: Known; readonly humidity: Known } => {
  const path = `${c.floorPath}/air/intake`;
  return {
    temperature: c.number(`${path}/temperature`, 'temperature') ?? airTemperature(c),
    humidity:
      c.number(`${path}/relativeHumidity`, 'relativeHumidity') ??
      c.numberOr(`${c.floorPath}/room/relativeHumidity`, 'relativeHumidity', usualHumidity),
  };
};

/** Dew point of the air that leaves the treatment, at the pressure of the line. */
export const treatedDewPoint = (c: Calculation): Known | undefined =>
  c.once('treatedDewPoint', (c) => {
    const path = `${c.floorPath}/air/dryer`;
    const kind = c.neededWord<'none' | keyof typeof usualDewPoint>(`${path}/kind`);
    if (kind === undefined) return undefined;
    if (kind.value !== 'none') {
      return c.numberOr(`${path}/dewPoint`, 'temperature', usualDewPoint[kind.value]);
    }
    const { temperature, humidity } = intakeState(c);
    return c.run(intakeDewPointSheet, {
      temperature,
      relativeHumidity: humidity,
      atmosphere: atmosphereHere(c),
      pressure: receiverLow(c),
    })?.lineDewPoint;
  });

/** The three classes of a designation of ISO 8573-1: `ISO 8573-1 [1:4:1]`. */
export const classesOf = (text: string): readonly [string, string, string] | undefined => {
  const found = /\[?\s*([0-9X-])\s*[:.]\s*([0-9X-])\s*[:.]\s*([0-9X-])\s*\]?\s*$/i.exec(text);
  return found === null
    ? undefined
    : [found[1]!.toUpperCase(), found[2]!.toUpperCase(), found[3]!.toUpperCase()];
};

/** The purity class that a drop asks against what the treatment chain is known to give. */
export const purityAnswer = (c: Calculation, dropPath: string): Answer => {
  const asked = c.neededWord(`${dropPath}/quality`);
  const path = `${c.floorPath}/air`;
  const given = c.word(`${path}/quality`);
  const said = {
    ...(asked === undefined ? {} : { demand: asked.value }),
    ...(given === undefined ? {} : { have: given.value }),
  };
  const classes = asked === undefined ? undefined : classesOf(asked.value);
  if (asked === undefined || classes === undefined) return { verdict: 'unknown', said };
  const stated = given === undefined ? undefined : classesOf(given.value);
  const kind = c.word<'none' | 'refrigerated' | 'desiccant' | 'membrane'>(`${path}/dryer/kind`);
  const dewPoint = kind === undefined ? undefined : treatedDewPoint(c);
  const dry = stated === undefined && dewPoint !== undefined && kind?.value !== 'none';
  const water = dry ? c.run(waterClassSheet, { dewPoint })?.waterClass : undefined;
  const compressor = c.book.floors![c.floor]!.air?.compressor?.oilFree;
  const word = <T extends string>(value: T, from: string): Known<T> => ({ value, from: { path: from } });
  const chain = c.run(treatmentChainSheet, {
    particlesAsked: word(classes[0] as AskedClass, `${dropPath}/quality`),
    waterAsked: word(classes[1] as AskedClass, `${dropPath}/quality`),
    oilAsked: word(classes[2] as AskedClass, `${dropPath}/quality`),
    ...(compressor === undefined
      ? {}
      : {
          compressor: word(compressor ? 'oil-free' : 'oil-flooded', `${path}/compressor/oilFree`),
        }),
    ...(kind === undefined ? {} : { dryer: kind }),
    ...(stated === undefined
      ? water === undefined
        ? {}
        : { waterGiven: water as Known<GivenClass> }
      : {
          particlesGiven: word(stated[0] as GivenClass, `${path}/quality`),
          waterGiven: word(stated[1] as GivenClass, `${path}/quality`),
          oilGiven: word(stated[2] as GivenClass, `${path}/quality`),
        }),
  });
  const purity = chain?.purity.value;
  if (purity === 'unknown' || (purity === undefined && given === undefined)) c.miss(`${path}/quality`);
  return {
    verdict: purity === 'met' ? 'carries' : purity === 'not met' ? 'short' : 'unknown',
    said,
  };
};

/** Dew point that air which touches the product must have by the trade's guideline, against the treatment's. */
export const productAirAnswer = (c: Calculation): Answer => {
  const path = `${c.floorPath}/air`;
  const coldest = c.needed(`${path}/coldest`, 'temperature');
  return {
    demand: undefined,
    have: treatedDewPoint(c),
    ...(coldest === undefined
      ? {}
      : {
          demand: c.run(dryerChoiceSheet, {
            coldest,
            contact: { value: 'direct', from: { path: '/line/blowOffs' } },
          })?.neededDewPoint,
        }),
  };
};
