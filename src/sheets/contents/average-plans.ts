/** Count the defective ones in a sample: accept up to `accept`, reject from `reject` on, else draw more. */
export interface ItemStage {
  /** Packages checked by now, earlier stages counted in. */
  readonly total: number;
  readonly accept: number;
  readonly reject: number;
}

export interface ItemPlan {
  /** Largest lot. */
  readonly most: number;
  readonly stages: readonly ItemStage[];
}

export interface MeanPlan {
  readonly most: number;
  readonly sample: number;
  /** By which the standard deviation is multiplied. */
  readonly factor: number;
}
