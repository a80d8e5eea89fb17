import { inUnit, quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { canningSyrup, type SyrupStrength } from '../../sugar/printedSyrups';
import { cupOf } from '../../sugar/sweeteners';
import { readJar } from '../../words/jar';
import { customary } from '../figures/customary';

/** A cup of granulated sugar, kg. */
const sugarCupKg = (): number => cupOf('sugar') / 1000;
const PINTS_IN_LOAD = 9;
const QUARTS_IN_LOAD = 7;

export interface SyrupForJars {
  readonly sugar: (jars: number) => Quantity<'volume'>;
  readonly water: (jars: number) => Quantity<'volume'>;
  readonly sugarKg: (jars: number) => number;
  /** Of the syrup in its pot: dissolved sugar adds less than its heap. */
  readonly liters: (jars: number) => number;
  readonly basis: readonly Basis[];
}

/**
 * Sugar and water for the syrup of some jars: the cups printed for a load of 9 pints or 7 quarts, shared out by
 * the jar. A jar of another size takes its share of the pint load by volume.
 */
export function syrupForJars(strength: SyrupStrength, jar: string): SyrupForJars {
  const row = canningSyrup(strength);
  const quarts = valueIn(readJar(jar).volume, 'quart');
  const byQuarts = quarts >= 1;
  const [sugar, water, load] = byQuarts
    ? [row.sugar7Quarts, row.water7Quarts, QUARTS_IN_LOAD]
    : [row.sugar9Pints, row.water9Pints, PINTS_IN_LOAD / 2];
  const cups = (perLoad: number, jars: number) => (perLoad / load) * quarts * jars;
  return {
    sugar: (jars) => quantityIn<'volume'>(cups(sugar, jars), 'cup', 'cup'),
    water: (jars) => quantityIn<'volume'>(cups(water, jars), 'cup', 'cup'),
    sugarKg: (jars) => cups(sugar, jars) * sugarCupKg(),
    liters: (jars) =>
      inUnit(cups(water, jars), 'cup', 'L') + (cups(sugar, jars) * sugarCupKg()) / customary('sugar-density'),
    basis: [
      basisOf(
        row,
        'ingredients',
        `${strength} syrup for a load of ${byQuarts ? '7 quarts' : '9 pints'}, shared out by the jar`,
      ),
    ],
  };
}
