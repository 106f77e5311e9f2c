import type { Book } from '../../../book/index.ts';
import type { Need } from '../need.ts';
import { quantityLever, upTo } from '../steps.ts';
import { carAnswer, carLevers, loadAnswer } from './lift-car.ts';
import * as fit from './room-fit.ts';
import { ventilationAir } from './room-load.ts';
import {
  gearHeightLever,
  gearWheelsLever,
  liftLever,
  openingLever,
  tippingLevers,
  turnLever,
  wayMassLever,
} from './route-levers.ts';
import { type SectionAt, sectionsOf } from './sections-of.ts';
import { slingAnswer, slingLevers } from './sling.ts';
import { feetLevers, footLevers, pointAnswer, pressureAnswer } from './standing-load.ts';
import { tippingAnswer } from './tipping.ts';
import * as way from './way-in.ts';

const standing = (at: SectionAt): readonly Need[] => {
  const common = { utility: 'building', of: at.section.tag } as const;
  return [
    {
      ...common,
      question: 'slabPressure',
      sense: 'most',
      kind: 'bearingPressure',
      answer: (c) => pressureAnswer(c, at),
      levers: (c) => [...footLevers(c, at), ...feetLevers(c, at)],
    },
    {
      ...common,
      question: 'slabPoint',
      sense: 'most',
      kind: 'force',
      answer: (c) => pointAnswer(c, at),
      levers: (c) => feetLevers(c, at),
    },
    {
      ...common,
      question: 'roomHeight',
      sense: 'least',
      kind: 'length',
      answer: (c) => fit.heightAnswer(c, at),
      levers: (c) => fit.heightLevers(c, at),
    },
  ];
};

const moving = (book: Book, floor: number, at: SectionAt): readonly Need[] => {
  const common = { utility: 'building', of: at.section.tag, sense: 'least' } as const;
  const route = book.floors?.[floor]?.room?.route ?? [];
  return [
    {
      ...common,
      question: 'routeWidth',
      kind: 'length',
      answer: (c) => way.widthAnswer(c, at),
      levers: (c) => openingLever(c, 'width'),
    },
    {
      ...common,
      question: 'routeHeight',
      kind: 'length',
      answer: (c) => way.heightAnswer(c, at),
      // lower skates are what can be changed without touching the building
      levers: (c) => [...gearHeightLever(c, at), ...openingLever(c, 'height')],
    },
    ...(route.some(({ kind }) => kind === 'turn')
      ? [
          {
            ...common,
            question: 'routeTurn',
            kind: 'length',
            answer: (c) => way.turnAnswer(c, at),
            levers: turnLever,
          } satisfies Need,
        ]
      : []),
    ...(route.some(({ kind, mass }) => kind !== 'lift' && (mass !== undefined || kind === 'crane'))
      ? [
          {
            ...common,
            question: 'routeMass',
            kind: 'mass',
            answer: (c) => way.massAnswer(c, at),
            levers: wayMassLever,
          } satisfies Need,
        ]
      : []),
    ...(route.some(({ kind }) => kind === 'lift')
      ? [
          {
            ...common,
            question: 'liftCar',
            kind: 'length',
            answer: (c) => carAnswer(c, at),
            levers: (c) => [...gearHeightLever(c, at), ...carLevers(c, at)],
          } satisfies Need,
          {
            ...common,
            question: 'liftLoad',
            sense: 'most',
            kind: 'ratio',
            answer: (c) => loadAnswer(c, at),
            levers: liftLever,
          } satisfies Need,
        ]
      : []),
    ...(route.some(({ kind, slope }) => kind === 'ramp' || slope !== undefined)
      ? [
          {
            ...common,
            question: 'routeTipping',
            sense: 'most',
            kind: 'ratio',
            answer: (c) => tippingAnswer(c, at),
            levers: (c) => tippingLevers(c, at),
          } satisfies Need,
        ]
      : []),
    ...(route.some(({ bearing }) => bearing !== undefined)
      ? [
          {
            ...common,
            question: 'routeBearing',
            kind: 'bearingPressure',
            answer: (c) => way.bearingAnswer(c, at),
            levers: () => gearWheelsLever(at),
          } satisfies Need,
        ]
      : []),
  ];
};

/** What the lift of a section asks of its gear; nothing where the book names no sling. */
const lifted = (at: SectionAt): readonly Need[] =>
  at.section.sling === undefined
    ? []
    : [
        {
          utility: 'building',
          of: at.section.tag,
          question: 'slingLegs',
          sense: 'least',
          kind: 'mass',
          answer: (c) => slingAnswer(c, at),
          levers: (c) => slingLevers(c, at),
        },
      ];

/** What the line asks of the building of a floor: to stand there, to get there, to be worked at. */
export const buildingNeeds = (book: Book, floor: number): readonly Need[] => {
  const sections = sectionsOf(book);
  const line = { utility: 'building', sense: 'least', kind: 'length' } as const;
  if (sections.length === 0) return [];
  return [
    ...sections.flatMap((at) => [...standing(at), ...lifted(at), ...moving(book, floor, at)]),
    {
      ...line,
      question: 'roomLength',
      answer: fit.lengthAnswer,
      levers: (c) => fit.placeLevers(c, 'length'),
    },
    { ...line, question: 'roomWidth', answer: fit.widthAnswer, levers: (c) => fit.placeLevers(c, 'width') },
    ...(book.floors?.[floor]?.room?.air === undefined
      ? []
      : [
          {
            question: 'ventilation',
            utility: 'building',
            sense: 'least',
            kind: 'actualAirFlow',
            answer: (c) => ({
              demand: ventilationAir(c),
              have: c.needed(`${c.floorPath}/room/air`, 'actualAirFlow'),
            }),
            levers: (c) =>
              quantityLever(c.book, {
                id: 'roomAir',
                path: `${c.floorPath}/room/air`,
                kind: 'actualAirFlow',
                numbers: upTo(40),
              }),
          } satisfies Need,
        ]),
  ];
};
