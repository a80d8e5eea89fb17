import { fail } from '../../errors/StillroomError';
import { isMass } from '../../quantity/fields';
import type { Makes } from '../../recipes/rows/tables';
import { checkBreaks } from '../kitchen/hours';
import type { PlanRequest, Wanted } from '../request/planInput';
import { isPriced, pricesOf } from '../request/pricesOf';
import { weightsOf } from './program';

/** Refuses what no single field shows: currencies, worths, least and most that cannot hold together. */
export function checkRequest(request: PlanRequest): void {
  for (const check of requestChecks(request)) check();
}

/** Each thing that may be wrong between fields, to be looked at by itself. */
export const requestChecks = (request: PlanRequest): (() => void)[] => [
  ...currencyChecks(request),
  ...request.products.map((wanted, index) => () => checkAmounts(wanted, `products[${index}]`)),
  ...request.products.map((wanted, index) => () => checkOwnFields(wanted, `products[${index}]`)),
  () => checkWorths(request),
  () => checkStove(request),
  () => checkBreaks(request.kitchen),
  () => checkAim(request),
];

/** One currency for all prices. */
function currencyChecks(request: PlanRequest): (() => void)[] {
  const [first, ...others] = pricesOf(request);
  if (first === undefined) return [];
  return others.map(({ path, price }) => () => {
    if (price.unit === first.price.unit) return;
    const expected = `the currency of ${first.path}, ${first.price.unit}: prices are never converted`;
    fail('CONTRADICTION', path, price.unit, expected);
  });
}

function checkAmounts({ least = 0, smallest = 1, most = Number.POSITIVE_INFINITY }: Wanted, path: string): void {
  const expected = `at most ${most}, the most of the same product`;
  if (least > most) fail('CONTRADICTION', `${path}.least`, least, expected);
  // none at all is wanted of a product with a `most` of 0
  if (most > 0 && smallest > most) fail('CONTRADICTION', `${path}.smallest`, smallest, expected);
}

function checkWorths({ products }: PlanRequest): void {
  const worths = new Set(products.flatMap(({ worth }) => (worth === undefined ? [] : [worth.currency === undefined])));
  if (worths.size < 2) return;
  const index = products.findIndex(({ worth }) => worth !== undefined && worth.currency === undefined);
  const expected = 'money like the other products, or plain numbers for all';
  fail('CONTRADICTION', `products[${index}].worth`, products[index]?.worth?.value, expected);
}

/** A price of gas says nothing where no stove burns it: it is asked for, not ignored. */
function checkStove({ kitchen: { utilities: energy } }: PlanRequest): void {
  if (energy?.gas !== undefined && energy.stove === undefined) {
    const expected = 'what the stove burns, "gas", "propane" or "electric", since a price of gas is given';
    fail('MISSING', 'kitchen.utilities.stove', undefined, expected);
  }
}

/** What is filled and sold by weight: no figure says what it measures. */
const BY_WEIGHT: ReadonlySet<Makes> = new Set(['dried', 'freeze-dried', 'leather', 'frozen', 'powder', 'jerky']);
/** And what is poured: no figure says what it weighs. */
const BY_VOLUME: ReadonlySet<Makes> = new Set(['vinegar', 'stock']);

/** Refuses fields that what is made has no use for. */
function checkOwnFields({ recipe, make, own, jar, method, pectin = false, serving }: Wanted, path: string): void {
  if (own !== undefined) {
    const twice = { recipe: recipe?.id, make: make?.word, jar, method };
    for (const [field, given] of Object.entries(twice))
      if (given !== undefined) fail('CONTRADICTION', `${path}.${field}`, given, 'left out: `own` says it');
  }
  const makes = recipe === undefined ? (make?.makes ?? []) : [recipe.makes];
  const added = pectin !== false && pectin !== 'none';
  if (added && !makes.some((each) => SPREADS.has(each)))
    fail('CONTRADICTION', `${path}.pectin`, pectin, 'jam, for nothing else takes pectin');
  if (serving === undefined || makes.length === 0) return;
  if (!isMass(serving) && makes.every((each) => BY_WEIGHT.has(each)))
    fail('CONTRADICTION', `${path}.serving`, serving, 'a mass, for it is packed by weight');
  if (isMass(serving) && makes.every((each) => BY_VOLUME.has(each)))
    fail('CONTRADICTION', `${path}.serving`, serving, 'a volume, for it is poured');
}
const SPREADS: ReadonlySet<Makes> = new Set(['jam', 'jelly', 'preserves', 'marmalade', 'spread']);

const SOME_PRICE = 'a price to go with it: of a lot, jars, lids, bags, sugar, energy or an hour of work';

/** Refuses an aim that has nothing to go by. */
function checkAim(request: PlanRequest): void {
  const { aim = 'most worth', products } = request;
  if (aim === 'least cost') {
    if (!isPriced(request)) fail('CONTRADICTION', 'aim', aim, SOME_PRICE);
    return;
  }
  const { worth, waste, money, handsHours } = weightsOf(aim);
  if (worth + waste + money + handsHours === 0) fail('CONTRADICTION', 'aim', aim, 'at least one weight above 0');
  if (money > 0 && !isPriced(request)) fail('CONTRADICTION', 'aim.money', money, SOME_PRICE);
  if (worth + waste === 0 && !products.some(({ least = 0 }) => least > 0)) {
    fail('CONTRADICTION', 'aim', aim, 'a product with a `least` above 0 to go with it: with no must nothing is made');
  }
}
