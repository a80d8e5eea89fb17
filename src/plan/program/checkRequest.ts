import { fail } from '../../errors/StillroomError';
import { isMass } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Make, PlanDayInput, PlanRequest, Wanted } from '../request/planInput';
import { isPriced, pricesOf } from '../request/pricesOf';
import { checkBreaks } from './hours';
import { weightsOf } from './program';

/** Refuses what no single field shows: currencies, worths, least and most, ready and raw that cannot hold together. */
export function checkRequest(request: PlanRequest, input: PlanDayInput): void {
  const prices = pricesOf(request);
  const [first] = prices;
  for (const { path, price } of prices) {
    if (first !== undefined && price.unit !== first.price.unit) {
      fail(
        'CONTRADICTION',
        path,
        price.unit,
        `the currency of ${first.path}, ${first.price.unit}: prices are never converted`,
      );
    }
  }
  request.products.forEach(({ least = 0, smallest = 1, most = Number.POSITIVE_INFINITY }, index) => {
    const expected = `at most ${most}, the most of the same product`;
    if (least > most) fail('CONTRADICTION', `products[${index}].least`, least, expected);
    // none at all is wanted of a product with a `most` of 0
    if (most > 0 && smallest > most) fail('CONTRADICTION', `products[${index}].smallest`, smallest, expected);
  });
  request.lots.forEach(({ raw: mass, ready }, index) => {
    if (ready !== undefined && valueIn(ready, 'kg') > valueIn(mass, 'kg')) {
      fail('CONTRADICTION', `lots[${index}].ready`, input.lots[index]?.ready, 'no more than the raw weight of the lot');
    }
  });
  for (const [index, wanted] of request.products.entries()) checkOwnFields(wanted, `products[${index}]`);
  const worths = new Set(
    request.products.flatMap(({ worth }) => (worth === undefined ? [] : [worth.currency === undefined])),
  );
  if (worths.size > 1) {
    const index = request.products.findIndex(({ worth }) => worth !== undefined && worth.currency === undefined);
    fail(
      'CONTRADICTION',
      `products[${index}].worth`,
      request.products[index]?.worth?.value,
      'money like the other products, or plain numbers for all',
    );
  }
  checkStove(request);
  checkBreaks(request.kitchen);
  checkAim(request);
}

/** A price of gas says nothing where no stove burns it: it is asked for, not ignored. */
function checkStove({ kitchen: { energy } }: PlanRequest): void {
  if (energy?.gas !== undefined && energy.stove === undefined) {
    const expected = 'what the stove burns, "gas", "propane" or "electric", since a price of gas is given';
    fail('MISSING', 'kitchen.energy.stove', undefined, expected);
  }
}

/** Makes that are filled and sold by weight: no figure says what they measure. */
const BY_WEIGHT: readonly Make[] = ['dried', 'freeze-dried', 'leather', 'frozen', 'powder'];
/** And those that are poured: no figure says what they weigh. */
const BY_VOLUME: readonly Make[] = ['vinegar', 'jelly stock'];

/** Refuses fields that this make has no use for. */
function checkOwnFields({ make, pectin = false, pectinGrade, serving }: Wanted, path: string): void {
  const added = pectin !== false && pectin !== 'none';
  if (added && make !== 'jam') fail('CONTRADICTION', `${path}.pectin`, pectin, 'jam, for nothing else takes pectin');
  if (pectinGrade !== undefined && !added)
    fail('CONTRADICTION', `${path}.pectinGrade`, pectinGrade, '`pectin: true` to go with it');
  if (serving !== undefined && !isMass(serving) && BY_WEIGHT.includes(make))
    fail('CONTRADICTION', `${path}.serving`, serving, 'a mass, for it is packed by weight');
  if (serving !== undefined && isMass(serving) && BY_VOLUME.includes(make))
    fail('CONTRADICTION', `${path}.serving`, serving, 'a volume, for it is poured');
}

const SOME_PRICE = 'a price to go with it: of a lot, jars, lids, bags, sugar, energy or an hour of work';

/** Refuses an aim that has nothing to go by. */
function checkAim(request: PlanRequest): void {
  const { aim = 'most worth', products } = request;
  if (aim === 'least cost') {
    if (!isPriced(request)) fail('CONTRADICTION', 'aim', aim, SOME_PRICE);
    return;
  }
  const { worth, waste, cost, hours } = weightsOf(aim);
  if (worth + waste + cost + hours === 0) fail('CONTRADICTION', 'aim', aim, 'at least one weight above 0');
  if (cost > 0 && !isPriced(request)) fail('CONTRADICTION', 'aim.cost', cost, SOME_PRICE);
  if (worth + waste === 0 && !products.some(({ least = 0 }) => least > 0)) {
    fail('CONTRADICTION', 'aim', aim, 'a product with a `least` above 0 to go with it: with no must nothing is made');
  }
}
