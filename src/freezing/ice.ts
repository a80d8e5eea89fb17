/** How much of a food is ice below its freezing point. */

/** Water that protein binds and that never freezes: 0.4 of the protein (Chen; also ASHRAE). */
export const boundWater = (water: number, protein: number): number => Math.min(water, 0.4 * protein);

/** Ice by Miles: (water - bound water) (1 - tf / t), temperatures in degC; none down to the freezing point. */
export const milesIce = (freezable: number, freezing: number, degC: number): number =>
  degC >= freezing ? 0 : freezable * (1 - freezing / degC);
