import { fail } from '../errors/StillroomError';

/** The share of the fresh weight that is left: the solids stay, so (1 - moisture) / (1 - target). */
export const shareLeft = (moisture: number, target: number): number => (1 - moisture) / (1 - target);

/** A target above the start cannot be reached by drying; where no target was given, the moisture is what is wrong. */
export function refuseWetter(moisture: number, target: number, givenTarget: unknown): void {
  if (target <= moisture) return;
  if (givenTarget === undefined)
    fail('CONTRADICTION', 'moisture', moisture, `a moisture above the target of ${target}`);
  fail('CONTRADICTION', 'targetMoisture', givenTarget, `a target of at most the start's moisture, ${moisture}`);
}
