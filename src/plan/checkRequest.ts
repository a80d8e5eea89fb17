import { fail } from '../errors/StillroomError';
import { valueIn } from '../quantity/scale';
import { type PlanDayInput, type PlanRequest, pricesOf } from './planInput';

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
  request.products.forEach(({ least = 0, most }, index) => {
    if (most !== undefined && least > most)
      fail('CONTRADICTION', `products[${index}].least`, least, `at most ${most}, the most of the same product`);
  });
  request.lots.forEach(({ raw: mass, ready }, index) => {
    if (ready !== undefined && valueIn(ready, 'kg') > valueIn(mass, 'kg')) {
      fail('CONTRADICTION', `lots[${index}].ready`, input.lots[index]?.ready, 'no more than the raw weight of the lot');
    }
  });
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
  if (request.aim === 'fewest hours' && !request.products.some(({ least = 0 }) => least > 0)) {
    fail(
      'CONTRADICTION',
      'aim',
      request.aim,
      'a product with a `least` above 0 to go with it: with no must the fewest hours are none',
    );
  }
}
