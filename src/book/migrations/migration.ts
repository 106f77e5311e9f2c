/** A step from one version of the book's form to the next. */
export interface Migration {
  readonly from: number;
  /** What the step does, for the changelog. */
  readonly about: string;
  /**
   * The data of the next version. What the step does not know it leaves as it is; it never throws, whatever the
   * data are: what is wrong in them is told after the last step.
   */
  readonly step: (data: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;
}
