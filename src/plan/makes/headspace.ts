/** Room left in what is not canned: as its page prints it, by the table for the freezer, or by the rule for jars. */
import { freezingHeadspace } from '../../freezing/freezingHeadspace';
import { headspaceFor } from '../../jars/headspaceFor';
import { parseQuantity } from '../../quantity/parseQuantity';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { pageOf } from '../../recipes/rows/rows';
import type { Basis, Caution } from '../../sources/basis';
import { readJar } from '../../words/jar';
import { standsBehind } from '../figures/standsBehind';
import type { Product } from './making';

/** A headspace, and what it rests on. */
export interface Room {
  readonly headspace: Quantity<'length'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

type Style = Parameters<typeof freezingHeadspace>[0]['style'];

/** In the freezer, by the size of the container; what is larger than a quart has the room of a quart. */
function inFreezer(style: Style, liters: number, of: string): Room {
  const jar = liters > valueIn(readJar('pint').volume, 'L') ? 'quart' : 'pint';
  const { headspace, basis, cautions } = freezingHeadspace({ style, mouth: 'wide', jar });
  return { headspace, basis: standsBehind(of, basis), cautions };
}

/** In a rigid box for the freezer; nothing where its page wraps it, or fills the box without a space. */
export function roomInBox({ row }: Product, liters: number): Room | undefined {
  const style = row.steps.find((step) => step.style !== undefined)?.style;
  return style === undefined ? undefined : inFreezer(style, liters, 'packs.headspace');
}

/** In a jar for the refrigerator or the freezer; nothing where no table prints it. */
export function roomInJar({ row, food }: Product, jar: string): Room | undefined {
  const printed = row.steps.find((step) => step.headspace !== undefined)?.headspace;
  if (printed !== undefined) {
    const headspace = parseQuantity(printed, 'length');
    return { headspace, basis: [pageOf(row, 'headspace', 'the recipe')], cautions: [] };
  }
  // what may be frozen in its jar swells
  if (row.keeps.some((keep) => 'place' in keep && keep.place === 'freezer'))
    return inFreezer('liquid', valueIn(readJar(jar).volume, 'L'), 'headspace');
  const rule = headspaceFor(food.id, row.form ?? row.makes);
  if (rule === undefined) return undefined;
  return { headspace: { value: rule.least, unit: 'in' }, basis: standsBehind('headspace', rule.basis), cautions: [] };
}
