import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import type { Given } from '../../common/given';
import { lookUp, nameKey } from '../../common/names';
import { fail } from '../../errors/StillroomError';
import { food } from '../../foods/fields';
import { nameOf } from '../../foods/tables';
import { fields, name, optional, readInput } from '../../quantity/fields';
import type { Quantity, Range } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import type { NotKnown } from '../../sources/no';
import type { Sourced } from '../../sources/table';
import { servesFor } from '../forms';
import { missing } from '../shape';
import { basisOfRows, median, memoryCaution, type Span, spanIn, spanOf } from '../span';
import { canningRows, containerFruitRows, customaryRows } from '../yields/tables';
import { type LegalBushelRow, legalBushels, recalledContainers } from './tables';

const schema = fields({
  /** A fruit or vegetable by any of its names. */
  food: food(),
  /** `bushel`, `peck`, `lug`, `flat`, `box`, `crate`, `half-bushel bag`, `quart` ... */
  container: name('a container, such as "bushel" or "lug"'),
  /** For a bushel: the State whose law sets its weight. */
  state: optional(name('a State whose law sets the bushel')),
});
export type ContainerWeightInput = Given<z.input<typeof schema>>;

/** What the food in a container weighs. */
export interface ContainerWeight {
  /** These tables weigh it. */
  readonly known: true;
  /** Its trade name. */
  readonly food: string;
  /** The container as the tables name it. */
  readonly container: string;
  /** What the food in it weighs as bought, net, in lb. */
  readonly raw: Range<Quantity<'mass'>>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

interface Packed {
  readonly container: string;
  readonly called?: readonly string[];
  readonly lb: readonly number[];
  readonly row: Sourced;
  readonly guide: boolean;
}

/** Every printed net weight of a container of this food; the canning guide's first, recalled ones last. */
function packedWeights(food: string): Packed[] {
  const foods = new Set(servesFor(food, 'containers'));
  const guide = canningRows.flatMap((row): Packed[] =>
    row.container !== undefined && row.containerLb !== undefined && row.foods.some((one) => foods.has(one))
      ? [{ container: row.container, lb: [row.containerLb], row, guide: true }]
      : [],
  );
  const plain = [...containerFruitRows, ...customaryRows, ...recalledContainers]
    .filter((row) => foods.has(row.food))
    .map(
      (row): Packed => ({
        container: row.container,
        ...(row.called === undefined ? {} : { called: row.called }),
        lb: row.lb,
        row,
        guide: false,
      }),
    );
  return [...guide, ...plain];
}

/** The printed weight of one container, in pounds, by its own name or by a shorter one. */
export interface PackedWeight {
  readonly container: string;
  readonly pounds: Span;
  readonly rows: readonly Sourced[];
}

/** What the tables print for this container of the food; nothing where they print none. */
export function packedWeight(food: string, container: string): PackedWeight | undefined {
  const wanted = nameKey(container);
  const all = packedWeights(food);
  const exact = all.filter((each) => nameKey(each.container) === wanted);
  const packed =
    exact.length > 0 ? exact : all.filter(({ called }) => called?.some((each) => nameKey(each) === wanted));
  const [first] = packed;
  if (first === undefined) return undefined;
  const figures = packed.flatMap(({ lb }) => lb);
  const read = packed.filter(({ row }) => row.obtained !== 'memory').flatMap(({ lb }) => lb);
  const likely = first.guide ? (first.lb[0] as number) : median(read.length > 0 ? read : figures);
  return { container: first.container, pounds: spanOf(likely, figures), rows: packed.map(({ row }) => row) };
}

/** The containers that the tables weigh for a food. */
export const containersWeighed = (food: string): string[] => [
  ...new Set(packedWeights(food).map(({ container }) => container)),
];

function legalBushel(food: string, state: string): ContainerWeight | NotKnown {
  const rows = legalBushels.filter((row) => row.food === food);
  const states = [...new Set(rows.map((row) => row.state))].map((one) => ({ name: one }));
  if (states.length === 0) {
    return missing('no law', `No law in these tables sets the bushel of ${nameOf(food)}.`, [
      { text: 'Leave the State out for the customary weight.', food: nameOf(food) },
    ]);
  }
  const found = lookUp(state, states, 'state', 'State with a legal bushel of it');
  const [row] = rows.filter((one) => one.state === found.name) as [LegalBushelRow];
  return {
    known: true,
    food: nameOf(food),
    container: 'bushel',
    raw: spanIn({ low: row.lb, likely: row.lb, high: row.lb }, 'lb', 'lb'),
    basis: basisOfRows(food, [row], 'raw', 'legal weight of the bushel'),
    cautions: [],
  };
}

/**
 * Internal: `kitchenMeasure` answers it. What the food in a customary container weighs: a bushel of apples, a lug of cherries, a flat of strawberries.
 *
 * A bushel is a volume, but trade and law give it a weight for each food. The likely weight is the canning guide's
 * where it prints one, else the middle of what extension tables print; the range is all of them.
 *
 * @returns `raw` in lb; `known: false` where no table weighs this container of the food, with those that one does
 * @throws StillroomError UNKNOWN_NAME for a food that is not in the pantry, or a State without a law
 *
 * Sources: Complete Guide to Home Canning; UGA Circular 780; Georgia yield chart; State codes.
 */
export function containerWeight(input: ContainerWeightInput): ContainerWeight | NotKnown {
  const given = readInput(schema, input);
  const { id } = given.food;
  if (given.state !== undefined) {
    if (nameKey(given.container) !== 'bushel')
      fail('CONTRADICTION', 'state', given.state, 'a State only with a bushel');
    return answer(legalBushel(id, given.state));
  }
  const packed = packedWeight(id, given.container);
  if (packed === undefined) return answer(noContainer(id, given.container));
  return answer({
    known: true as const,
    food: nameOf(id),
    container: packed.container,
    raw: spanIn(packed.pounds, 'lb', 'lb'),
    basis: basisOfRows(id, packed.rows, 'raw', 'net weight of the container'),
    cautions: memoryCaution(packed.rows),
  });
}

/** The no where no table weighs a container of a food, with those that one does. */
export function noContainer(food: string, container: string): NotKnown {
  const printed = containersWeighed(food);
  return missing('no weight', `These tables do not weigh a ${container} of ${nameOf(food)}.`, [
    ...printed.map((each) => ({ text: `a ${each} of ${nameOf(food)}`, food: nameOf(food) })),
    { text: 'Weigh one, and give its mass.' },
  ]);
}
