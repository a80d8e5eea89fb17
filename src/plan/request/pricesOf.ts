import type { Money } from '../../quantity/types';
import type { PlanRequest } from './planInput';

type Priced = Pick<PlanRequest, 'lots' | 'kitchen' | 'products'>;

/** Whether anything that a plan uses up has a price. */
export const isPriced = (request: Priced): boolean => pricesOf(request).some(({ spent }) => spent);

/** A price of the request: where it stands, and whether it is money spent (not what a unit is worth). */
interface PriceGiven {
  readonly path: string;
  readonly price: Money;
  readonly spent: boolean;
}

/** Every price of the request, so that they can be checked to be of one currency. */
export function pricesOf(request: Priced): PriceGiven[] {
  const { lots, kitchen: own, products } = request;
  const at = (path: string, price: Money | undefined, spent = true): PriceGiven[] =>
    price === undefined ? [] : [{ path, price, spent }];
  return [
    ...lots.flatMap(({ price }, index) => at(`lots[${index}].price`, price)),
    ...(own.jars ?? []).flatMap(({ price }, index) => at(`kitchen.jars[${index}].price`, price)),
    ...at('kitchen.lids.price', own.lids?.price),
    ...at('kitchen.bags.price', own.bags?.price),
    ...(own.pantry ?? []).flatMap(({ price }, index) => at(`kitchen.pantry[${index}].price`, price)),
    ...at('kitchen.utilities.electricity', own.utilities?.electricity),
    ...at('kitchen.utilities.gas', own.utilities?.gas),
    ...at('kitchen.wage', own.wage),
    ...products.flatMap(({ worth: value }, index) =>
      value?.currency === undefined
        ? []
        : at(`products[${index}].worth`, { value: value.value, unit: value.currency }, false),
    ),
  ];
}
