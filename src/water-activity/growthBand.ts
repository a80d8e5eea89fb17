/** The classic bands of water activity, and what the trade keeps in each. Internal. */
import bandsJson from '../../data/water-activity/activity-bands.json';
import saltJson from '../../data/water-activity/salt-bands.json';
import type { Basis } from '../sources/basis';
import { asTable, basisOf } from '../sources/table';
import type { TableRow } from './schemas';

const bands = asTable<TableRow<'activity-bands'>>(bandsJson).rows;
const saltBands = asTable<TableRow<'salt-bands'>>(saltJson).rows;

/** The classic band that a water activity falls in. */
export interface GrowthBand {
  /** Lower end of the band. */
  readonly low: number;
  /** Upper end of the band. */
  readonly high: number;
  /** The organisms that the lower end of the band stops, as printed. */
  readonly stoppedBelow: string;
  /** Foods typically in the band, as printed. */
  readonly typicalFoods: string;
  /** Salted fish of this water activity, where a band is printed for it. */
  readonly saltedFish?: SaltedFish;
}
/** Salted fish of a water activity. */
export interface SaltedFish {
  /** Salt in its water, as a share; an end is absent where the band is open. */
  readonly salt: { readonly low?: number; readonly high?: number };
  /** Organisms that make people ill and may still grow, as printed. */
  readonly printedPathogens: string;
  /** Organisms that spoil and may still grow, as printed. */
  readonly printedSpoilers: string;
}

/** A value on a border belongs to the wetter band; drier than the last printed band counts as in it. */
export function bandOf(waterActivity: number): { readonly band: GrowthBand; readonly basis: readonly Basis[] } {
  const row = (bands.find(({ low }) => waterActivity >= low) ?? bands.at(-1)) as TableRow<'activity-bands'>;
  const salted = saltBands.find(({ low }) => waterActivity >= low);
  const fish: SaltedFish | undefined =
    salted === undefined
      ? undefined
      : {
          salt: {
            ...(salted.salt_from === null ? {} : { low: salted.salt_from }),
            ...(salted.salt_to === null ? {} : { high: salted.salt_to }),
          },
          printedPathogens: salted.pathogens,
          printedSpoilers: salted.spoilage,
        };
  return {
    band: {
      low: row.low,
      high: row.high,
      stoppedBelow: row.inhibited_below,
      typicalFoods: row.foods,
      ...(fish === undefined ? {} : { saltedFish: fish }),
    },
    basis: [
      basisOf(row, 'band', 'classic band of water activity'),
      ...(salted === undefined ? [] : [basisOf(salted, 'band.saltedFish', 'what grows in salted fish')]),
    ],
  };
}
