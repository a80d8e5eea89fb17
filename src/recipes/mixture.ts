import type * as z from 'zod/mini';
import { phOf } from '../acid/phOf';
import { answer } from '../common/answer';
import { exact } from '../common/exact';
import type { Given } from '../common/given';
import { type FoundFood, food, form } from '../foods/fields';
import { foodOf, formName } from '../foods/tables';
import { type Composition, composition } from '../produce/composition/composition';
import { fields, list, mass, optional, readInput } from '../quantity/fields';
import { mapRange } from '../quantity/range';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { practiceBasis } from '../sources/table';
import { fruitWaterActivity } from '../water-activity/fruitWaterActivity';
import { targetMoisture } from '../words/shares';
import { recipeCaution } from './cautions';
import { RECIPES } from './rows/rows';

const MOST_PARTS = 30;
const schema = /* @__PURE__ */ fields({
  /** What goes in: 1 to 30 foods, each with its form and mass. */
  parts: list(
    'the parts',
    fields({
      /** The food. */
      food: food(),
      /** Its form; raw when left out. */
      form: optional(form()),
      /** How much of it. */
      mass: mass(),
    }),
    1,
    MOST_PARTS,
  ),
  /** Moisture that the mixture is dried to, as a share, for its water activity. */
  targetMoisture: optional(targetMoisture({ above: 0, below: 1 })),
});
export type MixtureInput = Given<z.input<typeof schema>>;
type Part = z.output<typeof schema>['parts'][number];

/** What a mixture is, from its parts. */
export interface Mixture {
  /** These tables know what every part is made of. */
  readonly known: true;
  /** All of it. */
  readonly mass: Quantity<'mass'>;
  /** Its parts. */
  readonly parts: readonly {
    /** Trade name. */
    readonly food: string;
    /** Its share of the mass, 0 to 1. */
    readonly share: number;
  }[];
  /** By the least acid part: one low-acid part makes the mixture low-acid; a part without a pH leaves it unknown. */
  readonly acidity: 'acid' | 'low-acid' | 'unknown';
  /** The parts that decide it. */
  readonly decidedBy: readonly string[];
  /** Water over mass, 0 to 1. */
  readonly moisture: Range<number>;
  /** Everything but water, over mass, 0 to 1. */
  readonly solids: Range<number>;
  /** Sugars over mass, 0 to 1, where every part has them. */
  readonly sugars?: Range<number>;
  /** Acid over mass, 0 to 1, where every part has it. */
  readonly acidShare?: Range<number>;
  /** Dissolved solids of the juice in degrees Brix, where every part has them. */
  readonly brix?: Range<number>;
  /** Water activity at `targetMoisture`, where that was asked for and can be told. */
  readonly waterActivity?: Range<number>;
  /** Recipes whose page mixes these foods: a mixture is canned by one of these and by nothing else. */
  readonly recipes: readonly {
    /** Fixed name. */
    readonly recipe: string;
    /** What the page calls it. */
    readonly name: string;
  }[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

interface Read {
  readonly part: Part;
  readonly kg: number;
  readonly of: Composition;
}

const asForm = ({ food: { form: held }, form: given }: Part): { form?: string } => {
  const id = given ?? held;
  return id === undefined ? {} : { form: formName(id) };
};

const joined = (
  reads: readonly Read[],
  get: (of: Composition) => Range<number> | undefined,
): Range<number> | undefined => {
  const total = reads.reduce((sum, { kg }) => sum + kg, 0);
  let sum: Range<number> = { low: 0, likely: 0, high: 0 };
  for (const { of, kg } of reads) {
    const share = get(of);
    if (share === undefined) return undefined;
    sum = {
      low: sum.low + (share.low * kg) / total,
      likely: sum.likely + (share.likely * kg) / total,
      high: sum.high + (share.high * kg) / total,
    };
  }
  return sum;
};

/** Sugar thins acid and has no pH, so the other parts decide. */
const hasNoPh = ({ food: { id } }: Part): boolean => foodOf(id).kind === 'sweetener';

interface Acidity {
  readonly acidity: Mixture['acidity'];
  readonly decidedBy: readonly string[];
  readonly basis: readonly Basis[];
}

function acidityOf(parts: readonly Part[]): Acidity {
  const listed = parts
    .filter((part) => !hasNoPh(part))
    .map((part) => {
      const inForm = phOf({ food: part.food.name, ...asForm(part) });
      const found = 'acidity' in inForm ? inForm : phOf({ food: part.food.name });
      return { name: part.food.name, found: 'acidity' in found ? found : undefined };
    });
  const basis = listed.flatMap(({ found }) => found?.basis ?? []).map((line) => ({ ...line, of: 'acidity' }));
  const low = listed.filter(({ found }) => found?.acidity === 'low-acid');
  const unknown = listed.filter(({ found }) => found === undefined);
  const [decide, acidity]: readonly [typeof listed, Mixture['acidity']] =
    low.length > 0
      ? [low, 'low-acid']
      : unknown.length > 0 || listed.length === 0
        ? [unknown, 'unknown']
        : [listed, 'acid'];
  return { acidity, decidedBy: decide.map(({ name }) => name), basis: basis.length > 0 ? basis : [derived('acidity')] };
}

/** Recipes whose page names every one of these foods, and lets them go into one batch. */
function recipesMixing(parts: readonly Part[]): Mixture['recipes'] {
  const ids = parts.filter((part) => !hasNoPh(part)).map(({ food: { id } }) => id);
  return RECIPES.filter(
    ({ mix, foods, keeps }) =>
      (mix === 'may mix' || mix === 'as printed') &&
      keeps.some((keep) => 'process' in keep) &&
      ids.every((id) => foods.includes(id)),
  ).map(({ id, name }) => ({ recipe: id, name }));
}

const noComposition = ({ name }: FoundFood): NotKnown =>
  notKnown({
    code: 'no composition',
    text: `These tables do not hold what ${name} is made of.`,
    instead: 'Leave it out, or name the food it is most like.',
    basis: [derived('reason', 'what the tables of composition hold')],
  });

/**
 * A mixture of foods: how acid it is by its least acid part, what it is made of, its Brix, and its water activity when
 * dried to a moisture; and the recipes whose page mixes these foods.
 *
 * Each share is the sum over the parts of share x mass / mass of all. Water activity is that of a fruit of the same
 * solids, sugars and acid (`fruitWaterActivity`). A mixture has a heat process only where a recipe's page mixes it.
 *
 * @returns the mixture; `known: false` where the tables do not hold what a part is made of
 * @throws StillroomError UNKNOWN_NAME for a name that is no food, OUT_OF_RANGE
 *
 * Source: composition and pH tables named in `basis`; that the least acid part decides is common practice, on the safe
 * side.
 *
 * @example
 * ```ts
 * import { mixture } from 'stillroom/recipes';
 *
 * const two = mixture({ parts: [{ food: 'peach', mass: '2 kg' }, { food: 'banana', mass: '1 kg' }] });
 * two.known && two.acidity; // => 'low-acid'
 * two.known && two.decidedBy; // => ['banana']
 * ```
 */
export function mixture(input: MixtureInput): Mixture | NotKnown {
  const asked = readInput(schema, input);
  const reads: Read[] = [];
  for (const part of asked.parts) {
    const of = composition({ food: part.food.name, ...asForm(part) });
    if (!of.known) return answer(noComposition(part.food));
    reads.push({ part, kg: valueIn(part.mass, 'kg'), of });
  }
  const total = reads.reduce((sum, { kg }) => sum + kg, 0);
  const moisture = joined(reads, ({ moisture: share }) => share) as Range<number>;
  const solids = { low: 1 - moisture.high, likely: 1 - moisture.likely, high: 1 - moisture.low };
  const sugars = joined(reads, (of) => of.sugars);
  const acid = joined(reads, (of) => of.acidShare);
  const soluble = joined(reads, (of) => of.solubleSolids);
  const found = acidityOf(asked.parts);
  const dried =
    asked.targetMoisture === undefined || sugars === undefined
      ? undefined
      : activityAt(asked.targetMoisture, solids, sugars, acid);
  const { unit } = (asked.parts[0] as Part).mass;
  return answer({
    known: true,
    mass: quantityIn(total, 'kg', unit),
    parts: reads.map(({ part, kg }) => ({
      food: part.food.name,
      share: exact(kg).div(total).toDigits(12).toNumber(),
    })),
    acidity: found.acidity,
    decidedBy: found.decidedBy,
    moisture,
    solids,
    ...(sugars === undefined ? {} : { sugars }),
    ...(acid === undefined ? {} : { acidShare: acid }),
    ...(soluble === undefined ? {} : { brix: mapRange(soluble, (share) => share * 100) }),
    ...(dried?.known === true ? { waterActivity: dried.waterActivityRange } : {}),
    recipes: recipesMixing(asked.parts),
    basis: [
      ...reads
        .flatMap(({ of }) => of.basis)
        .map((line) => ({
          ...line,
          of: line.of === 'per100g' ? 'moisture' : line.of === 'solubleSolids' ? 'brix' : line.of,
        }))
        .filter(
          ({ of }) =>
            of === 'moisture' ||
            (of === 'sugars' && sugars !== undefined) ||
            (of === 'acidShare' && acid !== undefined) ||
            (of === 'brix' && soluble !== undefined),
        ),
      derived('solids', 'shares of the parts by mass'),
      ...found.basis,
      practiceBasis('decidedBy', 'the least acid part decides'),
      ...(dried?.known === true ? dried.basis.map((line) => ({ ...line, of: 'waterActivity' })) : []),
    ],
    cautions: [recipeCaution('mixture-needs-a-recipe'), caution('estimate'), caution('follow-local-guidance')],
  });
}

const activityAt = (to: number, solids: Range<number>, sugars: Range<number>, acid: Range<number> | undefined) =>
  fruitWaterActivity({
    composition: {
      solids: solids.likely,
      sugars: sugars.likely,
      ...(acid === undefined ? {} : { acidShare: acid.likely }),
    },
    moisture: to,
  });
