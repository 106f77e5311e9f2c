import type { Book } from '../book/index.ts';
import type { FloorAssessment } from '../floor/assessment.ts';
import type { UtilityFigure, UtilityFinding } from '../floor/utilities/utility-finding.ts';
import { placeFigure } from '../proof/place-figure.ts';

export type Section = NonNullable<NonNullable<Book['line']>['sections']>[number];

/** A section in its sling as it is drawn, from its side; all in m, from the corner at its feet. */
export interface LiftDrawing {
  readonly length: number;
  readonly height: number;
  /** Lifting points: places along, and their height. */
  readonly points: readonly [number, number];
  readonly level: number;
  /** Centre of gravity along; up where the book says it. */
  readonly centre: number;
  readonly up?: number;
  /** Height of the hook above the feet. */
  readonly hook: number;
}

/** How a section is lifted, and what stands in its way in. */
export interface Lift {
  readonly section: Section;
  readonly path: string;
  /** Legs against their plate; absent where the book names no sling. */
  readonly legs?: UtilityFinding;
  /** Legs, angle, pulls, centre: each with its working. */
  readonly figures: readonly UtilityFigure[];
  /** Doors, corners, ramps and floors on the way. */
  readonly route: readonly UtilityFinding[];
  readonly drawing?: LiftDrawing;
}

const liftFigures: ReadonlySet<string> = new Set([
  'centreAlong',
  'centreAcross',
  'slingFirst',
  'slingSecond',
  'slingAngle',
  'slingTensionFirst',
  'slingTensionSecond',
]);

/** Questions to the building that are asked while the section moves, and where it is set down. */
const onWay: ReadonlySet<string> = new Set([
  'routeWidth',
  'routeHeight',
  'routeTurn',
  'routeMass',
  'liftCar',
  'liftLoad',
  'routeTipping',
  'routeBearing',
  'slabPoint',
  'slabPressure',
]);

const drawingOf = (book: Book, path: string, centre: number | undefined): LiftDrawing | undefined => {
  const metres = (field: string): number | undefined => placeFigure(book, `${path}/${field}`, 'length').value;
  const [length, height, from, along, hang] = [
    'length',
    'height',
    'sling/x',
    'sling/along',
    'sling/height',
  ].map(metres);
  if (
    centre === undefined ||
    length === undefined ||
    height === undefined ||
    from === undefined ||
    along === undefined ||
    hang === undefined
  )
    return undefined;
  // points of which nobody says how high they are sit on top
  const level = metres('sling/level') ?? height;
  const up = metres('centre/z');
  return {
    length,
    height,
    points: [from, from + along],
    level,
    centre,
    hook: level + hang,
    ...(up === undefined ? {} : { up }),
  };
};

/** The sections of a book as they are lifted and moved on one floor. */
export const liftsOf = (book: Book, { utilities }: Pick<FloorAssessment, 'utilities'>): readonly Lift[] =>
  (book.line?.sections ?? []).map((section, i): Lift => {
    const path = `/line/sections/${i}`;
    const own = utilities.findings.filter(({ of }) => of === section.tag);
    const figures = utilities.figures.filter(({ of, id }) => of === section.tag && liftFigures.has(id));
    const legs = own.find(({ question }) => question === 'slingLegs');
    const centre = figures.find(({ id }) => id === 'centreAlong')?.figure.value;
    const drawing = drawingOf(book, path, centre);
    return {
      section,
      path,
      figures,
      route: own.filter(({ question }) => onWay.has(question)),
      ...(legs === undefined ? {} : { legs }),
      ...(drawing === undefined ? {} : { drawing }),
    };
  });
