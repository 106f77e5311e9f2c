import type { ColumnShare } from './uncertain-floor.ts';

/**
 * How much of what a stiff run's liquid would press through closing lanes is counted.
 *
 * Method   [1] a run through which waves pass to and fro in half of a stroke moves as one: all of it, less what a stroke
 *          that is not quite straight and a little air take. [2] Behind soft walls it may be next to nothing or all of it,
 *          by length, wall and how many lanes close within a wave; and of a run of which nothing is said it is not even
 *          known which. Mean and deviation are those of "none or all, as likely the one as the other", the widest that a
 *          share can have
 * Source   rows by the method of characteristics, gravity and mains, 4 to 10 m of 32 mm, 1 to 8 lanes (computed): [1] waves
 *          of 1000 m/s 0.93 to 0.99, of 300 m/s 0.68 to 0.98 with a mean of 0.89; [2] of 25 to 100 m/s a mean of 0.5 with
 *          a deviation of 0.4
 */
export const stiffRun: ColumnShare = { share: 1, deviation: 0.1 };
export const openRun: ColumnShare = { share: 0.5, deviation: 0, ofRun: 0.5 };

/** Standard deviation of a share, of lanes and run together. */
export const shareDeviation = ({ deviation, ofRun = 0 }: ColumnShare): number => Math.hypot(deviation, ofRun);
