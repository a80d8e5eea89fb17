import { seeded } from '../../src/common/seeded';
import type { PlanDayInput } from '../../src/plan/index';

type Products = NonNullable<PlanDayInput['products']>;
/** What a product of these kitchens is made of. */
const foodOf = ({ from }: Products[number]) => String(from);

/** What is scarce in a small kitchen, by turns. */
const KINDS = ['one pot', 'small pot, big canner', 'shared loads', 'one pair of hands', 'large loads'] as const;

/** Invented: a kitchen short of pots or hands that cans hot and raw packs, jars of two products in one load among them. */
export function randomSmallKitchen(seed: number): PlanDayInput {
  const random = seeded(seed);
  const whole = (low: number, high: number) => Math.floor(low + (high - low + 1) * random());
  const pick = <T>(from: readonly T[]): T => from[whole(0, from.length - 1)] as T;
  const kind = KINDS[seed % KINDS.length];
  const jar = pick(['pint', 'quart'] as const);
  const big = kind === 'small pot, big canner' || kind === 'large loads';
  const canned: Products = [
    { make: 'jars', from: 'peaches', form: 'halves', pack: 'hot', jar, syrup: 'light' },
    { make: 'jars', from: 'peaches', form: 'slices', pack: 'hot', jar, syrup: 'light' },
    { make: 'jars', from: 'peaches', form: 'slices', pack: 'raw', jar, syrup: 'medium' },
    { make: 'jars', from: 'pears', form: 'halves', pack: 'hot', jar },
    { make: 'jars', from: 'apples', form: 'sauce', jar },
    { make: 'jars', from: 'tomatoes', form: 'crushed', jar },
    { make: 'jars', from: 'carrots', pack: 'hot', jar },
    { make: 'jars', from: 'carrots', pack: 'raw', jar },
  ];
  const other: Products = [
    { make: 'frozen', from: 'peaches', form: 'slices' },
    { make: 'dried', from: 'apples', form: 'slices' },
  ];
  const first = whole(0, canned.length - 1);
  const products =
    kind === 'shared loads'
      ? canned.slice(0, 5)
      : [canned[first], canned[(first + whole(1, 3)) % canned.length], pick(other)].map((each) => ({
          ...(each as Products[number]),
        }));
  const holds = big ? { pint: whole(14, 24), quart: whole(10, 16) } : { pint: whole(6, 9), quart: whole(5, 7) };
  return {
    lots: (['peach', 'pear', 'apple', 'tomato', 'carrot'] as const)
      .filter((food) => products.some((each) => foodOf(each).startsWith(food)))
      .map((food) => ({ food, raw: { value: whole(5, 25), unit: 'kg' as const } })),
    kitchen: {
      elevation: { value: whole(0, 1800), unit: 'm' },
      hours: random() < 0.2 ? ['6 h', '6 h'] : { value: whole(5, 12), unit: 'h' },
      hands: kind === 'one pair of hands' ? 1 : kind === 'shared loads' ? whole(2, 3) : whole(1, 2),
      burners: whole(1, 3),
      pots: [
        { volume: { value: kind === 'small pot, big canner' ? whole(3, 6) : whole(6, 14), unit: 'quart' } },
        ...(kind === 'large loads' || kind === 'one pair of hands' || kind === 'shared loads'
          ? [{ volume: '5 quarts' as const, count: 2 }]
          : []),
      ],
      canners: [
        { method: 'boiling-water', holds },
        { method: 'weighted-gauge', holds: { pint: 9, quart: 7 } },
      ].filter((_, index) => index === 0 || products.some((each) => foodOf(each) === 'carrots')) as never,
      dryer: { trays: 4, trayArea: '1300 cm2' },
      freezer: { room: '20 L' },
    },
    products: products.map((each) => ({ ...each, worth: whole(4, 40) / 4 })),
  };
}
