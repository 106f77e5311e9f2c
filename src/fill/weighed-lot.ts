import type { OimlPlan, OimlTable } from '../sheets/contents/oiml-constants.ts';
import type { ContentsProduct, ContentsRule } from '../sheets/contents/reference-temperature.ts';

/** One filled bottle as it was weighed; masses in kg as the balance showed them. */
export interface WeighedPackage {
  readonly gross: number;
  /** Its own empty bottle with closure. */
  readonly tare?: number;
  readonly lane?: string;
}

export type LotPlan = 'single' | 'double' | 'destructive';

/** How the density of the product is known. */
export type ProductDensity =
  | 'water'
  | {
      /** kg/m3. */
      readonly value: number;
      /** K, at which it holds. */
      readonly temperature?: number;
      /** By weight in air, as a flask on the balance gives it; else the true density of a table or a hydrometer. */
      readonly inAir?: boolean;
      /** Cubic expansion of the product, 1/K, where the density was not measured at the reference temperature. */
      readonly expansion?: number;
    };

export interface LotScale {
  /** kg. */
  readonly division: number;
  readonly capacity?: number;
  /** Standard uncertainty of its calibration, kg; a division where it is not known. */
  readonly calibration?: number;
  /** Standard deviation of repeated weighings, kg; a division where it is not known. */
  readonly repeatability?: number;
  readonly scaleClass?: 'II' | 'III';
}

/** Filled bottles that were drawn from a lot and weighed, with the rule that judges them. SI throughout. */
export interface WeighedLot {
  readonly rule: ContentsRule;
  /** Of the average systems; the double one where nothing is said. OIML and Handbook 133 have one each. */
  readonly plan?: LotPlan;
  /** How the rule sorts the product; a liquid where nothing is said. */
  readonly product?: ContentsProduct;
  /** m3. */
  readonly label?: number;
  /** Bottles in the lot. */
  readonly size?: number;
  /** In the order in which they were drawn. */
  readonly packages: readonly WeighedPackage[];
  /** Tares of opened or empty bottles with closures, where the packages have none of their own. */
  readonly tares?: readonly number[];
  readonly density?: ProductDensity;
  /** K; what the parties agreed, used only where the rule sets none. */
  readonly agreedReference?: number;
  /** kg/m3; 1.2 where it is not known. */
  readonly airDensity?: number;
  /** Maximum allowable variation, m3, and the edition from which whatever is typed in was read. */
  readonly variation?: number;
  readonly edition?: string;
  /** Packages to open for the tare in all, typed in from the handbook's table 2-3. */
  readonly tareSample?: number;
  /** Whose sampling table of OIML R 87; that of Australia where nothing is said. */
  readonly table?: Exclude<OimlTable, 'typed in'>;
  /** Plan of OIML R 87 that was typed in from the edition, in the place of a table. */
  readonly typedPlan?: Omit<OimlPlan, 'most'>;
  readonly scale?: LotScale;
}
