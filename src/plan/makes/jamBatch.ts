import { describeJar } from '../../jars/describeJar';
import { knownOr } from '../../produce/shape';
import { kitchenMeasure } from '../../produce/weights/kitchenMeasure';
import { formatQuantity } from '../../quantity/formatQuantity';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { PantryItem } from '../../recipes/pantryItems';
import { foodsOfJams, type PrintedJam, printedJams } from '../../recipes/printedJams';
import { pageOf } from '../../recipes/rows/rows';
import { type Basis, joinBasis } from '../../sources/basis';
import { customary, customaryBasis } from '../customary';
import { potsOf } from '../program/kitchen';
import type { Wanted } from '../request/planInput';
import type { Day } from './making';
import { kgOfMeasure } from './pantry';
import { sugarCupKg } from './syrupForJars';

/** One batch of a printed recipe in plain numbers; the fuller end where a range is printed. */
export interface Batch {
  readonly printed: PrintedJam;
  readonly fruitKg: number;
  readonly sugarKg: number;
  /** In the pot, with the room it needs to foam. */
  readonly litres: number;
  /** Jars of the size asked for: the least and the most that the printed yield fills. */
  readonly jars: { readonly low: number; readonly high: number };
  /** Kg from the pantry. */
  readonly pantry: ReadonlyMap<PantryItem, number>;
  readonly basis: readonly Basis[];
}

/** Why a jam is not made, with what to do instead. */
export interface NoJam {
  readonly code: string;
  readonly reason: string;
  readonly instead: string;
}

/** The printed recipe that a product asks for, or the reason why none fits. */
export function printedFor({ request }: Day, wanted: Wanted, trade: string): PrintedJam | NoJam {
  const all = printedJams(trade);
  if (all.length === 0) {
    return {
      code: 'no-recipe',
      reason: `these tables hold no printed recipe for ${trade} jam with a process, and jam is canned by a printed recipe only: its acid, pectin and sugar belong to the process`,
      instead: `freeze or dry the fruit; jam recipes are held for ${foodsOfJams().join(', ')}`,
    };
  }
  const kind = typeof wanted.pectin === 'string' ? wanted.pectin : undefined;
  const fit = all.filter(({ pectin }) =>
    kind !== undefined ? pectin === kind : wanted.pectin === undefined || (pectin !== 'none') === wanted.pectin,
  );
  // where the cook leaves it open, the pectin that is in the pantry
  const atHand = new Set(request.kitchen.pantry?.map(({ item }) => item));
  const recipe = fit.find(({ pectin }) => pectin !== 'none' && atHand.has(PECTIN_ITEMS[pectin])) ?? fit[0];
  if (recipe === undefined) {
    return {
      code: 'no-recipe-for-pectin',
      reason: `these tables hold no printed recipe for ${trade} jam with ${pectinWords(kind ?? (wanted.pectin === true ? 'added' : 'none'))}`,
      instead: `ask for ${all.map(({ pectin }) => `pectin: "${pectin}"`).join(' or ')}`,
    };
  }
  const own = (['sugarToFruit', 'finishSolids', 'pectinGrade'] as const).filter((field) => wanted[field] !== undefined);
  if (own.length > 0) {
    return {
      code: 'recipe-changed',
      reason: `\`${own.join('`, `')}\` would change the printed recipe, and the process holds for that recipe only: ${proportions(recipe)}; these tables hold no recipe for ${trade} jam with another share of sugar`,
      instead: `leave \`${own.join('`, `')}\` off for the printed recipe, or freeze or dry the fruit`,
    };
  }
  return recipe;
}

/** What the pantry calls each kind of pectin. */
const PECTIN_ITEMS = { powdered: 'pectin', liquid: 'liquid pectin' } as const satisfies Record<string, PantryItem>;

const pectinWords = (kind: string): string => (kind === 'none' ? 'no added pectin' : `${kind} pectin`);

export const between = ([low, high]: readonly [number, number]): string =>
  low === high ? `${low}` : `${low} to ${high}`;

const proportions = ({ fruit, sugar, measure }: PrintedJam): string =>
  `${between(sugar)} cups of sugar to ${between(fruit)} cups of fruit (${measure})`;

/** A batch of a recipe for jars of a size. */
export function batchOf(printed: PrintedJam, trade: string, jar: string): Batch {
  const cups = (value: number): Quantity<'volume'> => ({ value, unit: 'cup' });
  const fruitLitres = valueIn(cups(printed.fruit[1]), 'L');
  const weighed =
    printed.form === 'whole'
      ? knownOr(kitchenMeasure({ food: trade, form: 'whole', volume: cups(printed.fruit[1]) }), 'food', trade)
      : undefined;
  const fruitKg = weighed === undefined ? fruitLitres * customary('pot-density') : valueIn(weighed.mass, 'kg');
  const sugarKg = printed.sugar[1] * sugarCupKg();
  const lemon =
    printed.lemonJuice > 0 && !printed.lemonOptional
      ? kgOfMeasure('bottled lemon juice', { value: printed.lemonJuice, unit: 'tbsp' })
      : undefined;
  const pantry = new Map<PantryItem, number>([['sugar', sugarKg]]);
  if (lemon !== undefined) pantry.set('bottled lemon juice', lemon.kg);
  if (printed.pectinMass !== undefined) pantry.set('pectin', valueIn(printed.pectinMass, 'kg'));
  if (printed.pectinVolume !== undefined)
    pantry.set('liquid pectin', kgOfMeasure('liquid pectin', printed.pectinVolume).kg);
  const halfPints = valueIn(describeJar({ jar }).capacity, 'pint') * 2;
  return {
    printed,
    fruitKg,
    sugarKg,
    litres:
      customary('jam-foam') *
      (fruitKg / customary('pot-density') +
        sugarKg / customary('sugar-density') +
        valueIn(cups(printed.water ?? 0), 'L') +
        valueIn({ value: printed.lemonJuice, unit: 'tbsp' }, 'L')),
    jars: {
      low: Math.floor(printed.halfPints[0] / halfPints + 1e-9),
      high: Math.ceil(printed.halfPints[1] / halfPints - 1e-9),
    },
    pantry,
    basis: joinBasis(
      [pageOf(printed.row, 'ingredients', 'the printed recipe')],
      weighed?.basis ?? [customaryBasis('pot-density', 'ingredients')],
      lemon?.basis ?? [],
    ),
  };
}

/** Whether a pot and a canner here hold one whole batch, and whether it fills a jar at all. */
export function roomFor(
  day: Day,
  batch: Batch,
  canners: readonly { readonly jars: number }[],
  jar: string,
): NoJam | undefined {
  const pots = potsOf(day.request.kitchen).map(({ most }) => valueIn(most, 'L'));
  if (Math.max(0, ...pots) < batch.litres) {
    const need = formatQuantity(quantityIn<'volume'>(batch.litres, 'L', day.metric ? 'L' : 'quart'), {
      rounding: 'up',
    });
    return {
      code: 'no-pot-for-batch',
      reason: `no pot here holds one batch, which needs ${need} with the room to foam, and a printed recipe is cooked whole`,
      instead: 'name a larger pot, or freeze the fruit',
    };
  }
  if (batch.jars.low === 0 || Math.max(0, ...canners.map(({ jars }) => jars)) < batch.jars.high) {
    return {
      code: 'no-canner-for-batch',
      reason: `no canner here holds the ${batch.jars.high} ${jar} jars of one batch at once`,
      instead: 'use a canner that does, or another jar',
    };
  }
  return undefined;
}
