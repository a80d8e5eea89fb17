import type * as z from 'zod/mini';
import recalled from '../../../data/produce/containers-recalled.json';
import legal from '../../../data/produce/legal-bushels.json';
import { answer } from '../../common/answer';
import { lookUp, nameKey } from '../../common/names';
import { fail } from '../../errors/StillroomError';
import { fields, name, optional, readInput } from '../../quantity/fields';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { type CatalogueRow, findProduce, namesAbove, namesBelow } from '../catalogue';
import { canningRows, containerFruitRows, customaryRows } from '../yields/printed';
import { produceField } from '../yields/readyFromRaw';
import { median, memoryCaution, spanIn, spanOf } from '../yields/span';

const schema = fields({
  produce: produceField,
  container: name('a container, such as "bushel" or "lug"'),
  state: optional(name('a State whose law sets the bushel')),
});
export type ContainerWeightInput = z.input<typeof schema>;

export interface ContainerWeight {
  readonly produce: string;
  readonly container: string;
  /** Net weight of the produce in it. */
  readonly weight: Range<Quantity<'mass'>>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

export interface LegalBushelRow extends Sourced {
  readonly state: string;
  readonly commodity: string;
  readonly produce: string;
  readonly lb: number;
}
interface RecalledRow extends Sourced {
  readonly produce: string;
  readonly container: string;
  readonly lb: readonly [number, number];
}
export const legalBushels = asTable<LegalBushelRow>(legal).rows;
export const recalledContainers = asTable<RecalledRow>(recalled).rows;

interface Packed {
  readonly container: string;
  readonly lb: readonly number[];
  readonly row: Sourced;
}

/** Every printed net weight of a container of this produce; the canning guide's first, recalled ones last. */
function packedWeights(produce: CatalogueRow): Packed[] {
  const names = new Set([...namesAbove(produce), ...namesBelow(produce)]);
  const guide = canningRows.flatMap((row) =>
    row.container !== undefined && row.containerLb !== undefined && row.produce.some((one) => names.has(one))
      ? [{ container: row.container, lb: [row.containerLb], row }]
      : [],
  );
  const plain = [...containerFruitRows, ...customaryRows, ...recalledContainers]
    .filter((row) => names.has(row.produce))
    .map((row) => ({ container: row.container, lb: row.lb, row }));
  return [...guide, ...plain];
}

function legalBushel(produce: CatalogueRow, state: string): ContainerWeight {
  const rows = legalBushels.filter((row) => row.produce === produce.name);
  const states = [...new Set(rows.map((row) => row.state))].map((one) => ({ name: one }));
  if (states.length === 0)
    fail('UNKNOWN_NAME', 'state', state, `no State: no law here sets the bushel of ${produce.name}`);
  const found = lookUp(state, states, 'state', 'State with a legal bushel of it');
  const [row] = rows.filter((one) => one.state === found.name) as [LegalBushelRow];
  return {
    produce: produce.name,
    container: 'bushel',
    weight: spanIn({ low: row.lb, likely: row.lb, high: row.lb }, 'lb', 'lb'),
    basis: [basisOf(row, 'legal weight of the bushel')],
    cautions: [],
  };
}

/**
 * What the produce in a customary container weighs: a bushel of apples, a lug of cherries, a flat of strawberries.
 *
 * A bushel is a volume, but trade and law give it a weight for each kind of produce. The likely weight is the canning
 * guide's where it prints one, else the middle of what extension tables print; the range is all of them.
 *
 * @param input.produce - any name of a fruit or vegetable
 * @param input.container - `bushel`, `half-bushel bag`, `peck`, `lug`, `box`, `crate`, `24-quart crate`, `flat`, `quart` ...
 * @param input.state - for a bushel, the State whose law sets its weight, in place of the tables
 * @returns `weight` in lb
 * @throws StillroomError UNKNOWN_NAME for produce in no table, or a container no table weighs for it, naming those it does
 *
 * Sources: Complete Guide to Home Canning; UGA Circular 780; Georgia yield chart; State codes.
 *
 * @example
 * ```ts
 * import { containerWeight } from 'stillroom/produce';
 *
 * containerWeight({ produce: 'apples', container: 'bushel' }).weight.likely; // => { value: 48, unit: 'lb' }
 * containerWeight({ produce: 'apples', container: 'bushel', state: 'Indiana' }).weight.likely; // => { value: 42, unit: 'lb' }
 * ```
 */
export function containerWeight(input: ContainerWeightInput): ContainerWeight {
  const given = readInput(schema, input);
  const produce = findProduce(given.produce);
  const wanted = nameKey(given.container);
  if (given.state !== undefined) {
    if (wanted !== 'bushel') fail('CONTRADICTION', 'state', given.state, 'a State only with a bushel');
    return answer(legalBushel(produce, given.state));
  }
  const all = packedWeights(produce);
  const packed = all.filter(({ container }) => nameKey(container) === wanted);
  const [first] = packed;
  if (first === undefined) {
    const printed = [...new Set(all.map(({ container }) => container))].join(', ');
    fail(
      'UNKNOWN_NAME',
      'container',
      given.container,
      printed === ''
        ? `no container: none is printed for ${produce.name}`
        : `a container printed for ${produce.name}: ${printed}`,
    );
  }
  const figures = packed.flatMap(({ lb }) => lb);
  const read = packed.filter(({ row }) => row.obtained !== 'memory').flatMap(({ lb }) => lb);
  const fromGuide = canningRows.some((row) => row === first.row);
  const likely = fromGuide ? (first.lb[0] as number) : median(read.length > 0 ? read : figures);
  return answer({
    produce: produce.name,
    container: first.container,
    weight: spanIn(spanOf(likely, figures), 'lb', 'lb'),
    basis: joinBasis(packed.map(({ row }) => basisOf(row, 'net weight of the container'))),
    cautions: memoryCaution(packed.map(({ row }) => row)),
  });
}
