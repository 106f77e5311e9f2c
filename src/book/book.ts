import type * as z from 'zod';
import type { bookSchema } from './schema/book.ts';

type Frozen<T> = T extends string | number | boolean | null | undefined
  ? T
  : { readonly [K in keyof T]: Frozen<T[K]> };

/** Everything about one hand-over, exactly as it was written: a quantity stays the text that it was. */
export type Book = Frozen<z.infer<typeof bookSchema>>;

export type Line = NonNullable<Book['line']>;
type Of<K extends keyof Line> = NonNullable<Line[K]> extends readonly (infer T)[] ? T : never;

export type About = NonNullable<Book['about']>;
export type Agreement = NonNullable<Book['agreement']>;
export type AgreedRate = NonNullable<Agreement['rates']>[number];
export type Product = Of<'products'>;
export type Format = Of<'formats'>;
export type Station = Of<'stations'>;
export type LoadStation = Extract<Station, { kind: 'load' }>;
export type Washer = Extract<Station, { kind: 'washer' }>;
export type Zone = NonNullable<Washer['zones']>[number];
export type Discharge = Extract<Station, { kind: 'discharge' }>;
export type Conveyor = Extract<Station, { kind: 'conveyor' }>;
export type FillStation = Extract<Station, { kind: 'fill' }>;
export type Lane = NonNullable<FillStation['lanes']>[number];
export type Closing = Extract<Station, { kind: 'closing' }>;
export type TakeOff = Extract<Station, { kind: 'take-off' }>;
export type HoldRule = Of<'holdRules'>;
export type Drive = Of<'drives'>;
export type Heater = Of<'heaters'>;
export type Load = Of<'loads'>;
export type Cylinder = Of<'cylinders'>;
export type AirDrop = Of<'airDrops'>;
export type BlowOff = Of<'blowOffs'>;
export type Device = Of<'devices'>;
export type StopDevice = Of<'stopDevices'>;
export type Interlock = Of<'interlocks'>;
export type TieIn = Of<'tieIns'>;
export type Section = Of<'sections'>;
export type Split = Of<'splits'>;
export type Box = Of<'boxes'>;
export type Join = Of<'joins'>;
export type Setting = Of<'settings'>;
export type Check = Of<'checks'>;
export type Wait = NonNullable<Book['waits']>[number];
export type Afterwards = NonNullable<Book['afterwards']>[number];
export type Floor = NonNullable<Book['floors']>[number];
export type Supply = NonNullable<Floor['supply']>;
export type Source = NonNullable<Supply['source']>;
export type MainSource = Extract<Source, { kind: 'main' }>;
export type GravitySource = Extract<Source, { kind: 'gravity' }>;
export type PumpedSource = Extract<Source, { kind: 'pumped' }>;
export type ReadingSource = Extract<Source, { kind: 'reading' }>;
export type RunPiece = NonNullable<Supply['run']>[number];
export type Pipe = Extract<RunPiece, { kind: 'pipe' }>;
export type Valve = Extract<RunPiece, { kind: 'valve' }>;
export type ConstantLoss = Extract<RunPiece, { kind: 'constant' }>;
export type Power = NonNullable<Floor['power']>;
export type Air = NonNullable<Floor['air']>;
export type Room = NonNullable<Floor['room']>;
