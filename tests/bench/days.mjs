/** Invented days for the planner, and its program in the format that HiGHS reads. */

/** A program in the LP format. */
export function toLp({ variables, bounds }) {
  const id = new Map(variables.map(({ name }, index) => [name, `v${index}`]));
  const sum = (terms) =>
    terms.map(([name, weight]) => `${weight < 0 ? '-' : '+'} ${Math.abs(weight)} ${id.get(name)}`).join(' ') || '0 v0';
  const rows = bounds.flatMap(({ terms, min, max }, index) => [
    ...(max === undefined ? [] : [` u${index}: ${sum(terms)} <= ${max}`]),
    ...(min === undefined ? [] : [` l${index}: ${sum(terms)} >= ${min}`]),
  ]);
  const integers = variables.filter(({ integer }) => integer).map(({ name }) => id.get(name));
  const worth = sum(variables.map(({ name, worth: each }) => [name, each]));
  return `Maximize\n obj: ${worth}\nSubject To\n${rows.join('\n')}\nGeneral\n ${integers.join(' ')}\nEnd\n`;
}

const FRUITS = ['peach', 'apple', 'plum', 'pear', 'apricot', 'nectarine', 'cherry', 'blueberry'];

/** What each fruit becomes: jars, dried, frozen, and where four are asked for a second pack for the freezer. */
const madeOf = (from, kinds) =>
  [
    from === 'apple'
      ? { make: 'jars', from, form: 'sauce', jar: 'pint' }
      : {
          make: 'jars',
          from,
          form: ['plum', 'cherry', 'blueberry'].includes(from) ? 'whole' : 'halves',
          pack: 'hot',
          jar: 'quart',
        },
    { make: 'dried', from, ...(['cherry', 'blueberry'].includes(from) ? {} : { form: 'slices' }), packSize: '4 oz' },
    { make: 'frozen', from, ...(['cherry', 'blueberry'].includes(from) ? {} : { form: 'slices' }), packSize: '1 lb' },
    { make: 'leather', from, packSize: '4 oz' },
  ].slice(0, kinds);

/** Invented: so many lots of so many fruits, and so many products of each, in a well found kitchen. */
export function largeDay(seed, { lots = 8, fruits = 4, kinds = 3, scale = 1 } = {}) {
  let state = seed;
  const random = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  const between = (low, high) => Math.round(low + (high - low) * random());
  const names = FRUITS.slice(0, fruits);
  const bought = Array.from({ length: lots }, (_, index) => ({
    name: `lot ${index + 1}`,
    food: names[index % names.length],
    raw: `${between(10, 60)} lb`,
  }));
  return {
    invented: true,
    lots: bought,
    kitchen: {
      elevation: '1,000 ft',
      hours: `${between(6, 14)} h`,
      hands: between(1, 3) * scale,
      pots: [{ volume: '12 quarts' }, { volume: '8 quarts' }],
      canners: [{ method: 'boiling-water', holds: { quart: 7, pint: 9 }, count: 2 }],
      jars: [
        { jar: 'quart', count: between(14, 40) * scale },
        { jar: 'pint', count: between(14, 40) * scale },
      ],
      dryer: { trays: between(6, 20) * scale, trayArea: '200 in2' },
      freezer: { room: `${between(20, 60) * scale} L` },
    },
    products: names
      .flatMap((from) => madeOf(from, kinds))
      .map((product) => ({ ...product, worth: between(4, 40) / 4 })),
  };
}
