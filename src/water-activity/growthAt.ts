import type * as z from 'zod/mini';
import { lowAcidByLaw } from '../acid/phLimits';
import { answer } from '../common/answer';
import { fields, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { pH as pHWord } from '../words/pH';
import { assumed } from './assumptions';
import { activityCaution } from './cautions';
import { activityField, storageTemperature } from './fields';
import { bandOf, type GrowthBand } from './growthBand';
import { conditionsAllow, type Organism, type OrganismKind, organisms } from './growthLimits';

const schema = fields({
  /** Water activity of the food, above 0 and below 1. */
  waterActivity: activityField(),
  /** pH of the food, 0 to 14; left out, acidity stops nothing. */
  pH: optional(pHWord()),
  /** Temperature it is kept at, -40 to 100 degC; left out, cold stops nothing. */
  temperature: optional(storageTemperature()),
});
export type GrowthAtInput = z.input<typeof schema>;

/** One organism that may grow, and the limits published for it. */
export interface MayGrow {
  /** Its name. */
  readonly name: string;
  /** What kind of organism it is: `pathogen` makes people ill, the others spoil food. */
  readonly kind: OrganismKind;
  /** Least water activity at which it grows. */
  readonly waterActivity: number;
  /** Least and highest pH at which it grows, where published. */
  readonly pH?: { readonly low: number; readonly high: number };
  /** Least and highest temperature at which it grows, where published. */
  readonly temperature?: { readonly low: Quantity<'temperature'>; readonly high: Quantity<'temperature'> };
}
export interface GrowthAt {
  /** Names of all that may grow: those that make people ill first, then those that spoil food. */
  readonly mayGrow: readonly string[];
  /** Those that make people ill, from the one that needs the most water. */
  readonly pathogens: readonly MayGrow[];
  /** Those that spoil food, from the one that needs the most water. */
  readonly spoilers: readonly MayGrow[];
  /** The classic band of water activity, with the foods that are usually in it. */
  readonly band: GrowthBand;
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** The organisms that the conditions do not stop, at a water activity. */
export const growing = (aw: number, pH: number | undefined, t: number | undefined): readonly Organism[] =>
  organisms.filter((organism) => aw >= organism.waterActivity && conditionsAllow(organism, pH, t));

function shown({ name, kind, waterActivity, pH, temperature }: Organism): MayGrow {
  const degrees = (value: number): Quantity<'temperature'> => ({ value, unit: 'degC' });
  return {
    name,
    kind,
    waterActivity,
    ...(pH === undefined ? {} : { pH: { low: pH[0], high: pH[1] } }),
    ...(temperature === undefined
      ? {}
      : { temperature: { low: degrees(temperature[0]), high: degrees(temperature[1]) } }),
  };
}

/** The cautions that go with every answer on growth. */
export function growthCautions(aw: number, pH: number | undefined): Caution[] {
  const acidUpTo = lowAcidByLaw().pH;
  return [
    activityCaution('limits-are-for-good-conditions'),
    activityCaution('toxin-before-growth-stops'),
    activityCaution('activity-is-not-process'),
    ...(aw > assumed('oil-activity') && (pH === undefined || pH > acidUpTo)
      ? [activityCaution('oil-keeps-out-air')]
      : []),
    ...(pH !== undefined && pH <= acidUpTo && aw >= assumed('mold-activity')
      ? [activityCaution('mold-may-raise-ph')]
      : []),
    caution('follow-local-guidance'),
  ];
}

/**
 * What may grow at a water activity, and at a pH and temperature where given.
 *
 * Each organism is judged by the most generous limit in any of the tables: the least water activity, the widest pH and
 * the widest temperatures. Proteolytic and nonproteolytic C. botulinum count as able to grow above pH 4.6, the line of
 * the law. An organism without a published water-activity limit counts down to 0.85. Spoilage yeasts, molds and
 * bacteria are judged by water activity alone. Recalled limits are not used, and no food lends a limit to another.
 * `band` is the classic band (a value on a border belongs to the wetter one), for orientation only.
 * Sources: USDA-ARS and FDA tables of growth factors, and papers that print a wider limit (D'Aoust 1991, Salmonella
 * at 2 degC); Banwart 1989 for groups; 21 CFR 114.3; Beuchat 1981 and ICMSF 1980 for the bands.
 *
 * @param input - `waterActivity`: above 0 and below 1; `pH`: 0 to 14; `temperature`: -40 to 100 degC, of storage
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { growthAt } from 'stillroom/water-activity';
 *
 * growthAt({ waterActivity: 0.5 }).mayGrow; // => []
 * growthAt({ waterActivity: 0.62 }).mayGrow; // => ['Zygosaccharomyces rouxii', 'osmophilic yeasts', 'xerophilic molds', 'Xeromyces bisporus']
 * growthAt({ waterActivity: 0.84, pH: 4.0 }).pathogens[0].name; // => 'Staphylococcus aureus'
 * growthAt({ waterActivity: 0.78 }).band.typicalFoods; // => 'jam, marmalade, marzipan, glace fruits'
 * ```
 */
export function growthAt(input: GrowthAtInput): GrowthAt {
  const { waterActivity, pH, temperature: at } = readInput(schema, input);
  const found = growing(waterActivity, pH, at === undefined ? undefined : valueIn(at, 'degC'));
  const { band, basis } = bandOf(waterActivity);
  // where nothing grows, the answer rests on the limit that comes nearest
  const rested = found.length === 0 ? organisms.slice(-1) : found;
  return answer({
    mayGrow: found.map(({ name }) => name),
    pathogens: found.filter(({ kind }) => kind === 'pathogen').map(shown),
    spoilers: found.filter(({ kind }) => kind !== 'pathogen').map(shown),
    band,
    basis: [...rested.flatMap((organism) => organism.basis('mayGrow')), ...basis],
    cautions: growthCautions(waterActivity, pH),
  });
}
