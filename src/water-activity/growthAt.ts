import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, number, optional, readInput, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { activityCaution } from './cautions';
import { activityField } from './fields';
import { conditionsAllow, type Organism, type OrganismKind, organisms } from './growthLimits';

export const pHField = () => number('a pH from 0 to 14', { min: 0, max: 14 });
export const storageTemperature = () =>
  temperature({ min: { value: -40, unit: 'degC' }, max: { value: 100, unit: 'degC' } });

const schema = fields({
  waterActivity: activityField(),
  pH: optional(pHField()),
  temperature: optional(storageTemperature()),
});
export type GrowthAtInput = z.input<typeof schema>;

/** One organism that may grow, and the limits published for it. */
export interface MayGrow {
  readonly name: string;
  readonly kind: OrganismKind;
  /** Least water activity. */
  readonly waterActivity: number;
  /** Least and highest pH. */
  readonly pH?: readonly [number, number];
  /** Least and highest temperature, degC. */
  readonly temperature?: readonly [number, number];
}
export interface GrowthAt {
  /** Names of all that may grow: those that make ill first, then those that spoil. */
  readonly mayGrow: readonly string[];
  readonly pathogens: readonly MayGrow[];
  readonly spoilers: readonly MayGrow[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The organisms that the conditions do not stop, at a water activity. */
export const growing = (aw: number, pH: number | undefined, t: number | undefined): readonly Organism[] =>
  organisms.filter((organism) => aw >= organism.waterActivity && conditionsAllow(organism, pH, t));

const shown = ({ basis: _, abovePH: __, ...organism }: Organism): MayGrow => organism;

/** The cautions that go with every answer on growth. */
export function growthCautions(aw: number, pH: number | undefined): Caution[] {
  return [
    activityCaution('limits-are-for-good-conditions'),
    activityCaution('toxin-before-growth-stops'),
    activityCaution('activity-is-not-process'),
    ...(aw > 0.93 && (pH === undefined || pH > 4.6) ? [activityCaution('oil-keeps-out-air')] : []),
    ...(pH !== undefined && pH <= 4.6 && aw >= 0.6 ? [activityCaution('mold-may-raise-ph')] : []),
    caution('follow-local-guidance'),
  ];
}

/**
 * What may grow at a water activity, and at a pH and temperature where given.
 *
 * Each organism is judged by the most generous limit that was read for it in any table: the least water activity,
 * the widest pH and the widest temperatures. Proteolytic and nonproteolytic C. botulinum count as able to grow
 * above pH 4.6, the line of the law. An organism without a published water-activity limit counts down to 0.85.
 * Spoilage yeasts, molds and bacteria are judged by water activity alone. Recalled limits are not used.
 * Sources: USDA-ARS and FDA tables of growth factors, and papers that print a wider limit (D'Aoust 1991, Salmonella
 * at 2 degC); Banwart 1989 for groups; 21 CFR 114.3.
 *
 * @param input - `waterActivity`: 0 to 1, exclusive; `pH`: 0 to 14; `temperature`: -40 to 100 degC, of storage
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { growthAt } from 'stillroom/water-activity';
 *
 * growthAt({ waterActivity: 0.5 }).mayGrow; // => []
 * growthAt({ waterActivity: 0.62 }).mayGrow; // => ['Zygosaccharomyces rouxii', 'osmophilic yeasts', 'xerophilic molds', 'Xeromyces bisporus']
 * growthAt({ waterActivity: 0.84, pH: 4.0 }).pathogens[0].name; // => 'Staphylococcus aureus'
 * ```
 */
export function growthAt(input: GrowthAtInput): GrowthAt {
  const { waterActivity, pH, temperature: at } = readInput(schema, input);
  const found = growing(waterActivity, pH, at === undefined ? undefined : valueIn(at, 'degC'));
  return answer({
    mayGrow: found.map(({ name }) => name),
    pathogens: found.filter(({ kind }) => kind === 'pathogen').map(shown),
    spoilers: found.filter(({ kind }) => kind !== 'pathogen').map(shown),
    basis: joinBasis(...(found.length === 0 ? organisms.slice(-1) : found).map(({ basis }) => basis)),
    cautions: growthCautions(waterActivity, pH),
  });
}
