/** Days of one recipe each, and rules that no plan of them may break: written from the rows and the public answers alone. */
import { seeded } from '../../src/common/seeded';
import { nameOf } from '../../src/foods/tables';
import { checkSchedule, type FeasibleDay, type PlanDayInput } from '../../src/plan/index';
import { testedProcess } from '../../src/process/index';
import { isMass } from '../../src/quantity/fields';
import { parseQuantity } from '../../src/quantity/parseQuantity';
import { valueIn } from '../../src/quantity/scale';
import type { Quantity } from '../../src/quantity/types';
import { recipeCaution } from '../../src/recipes/cautions';
import { RECIPES, recipeOfId } from '../../src/recipes/rows/rows';
import type { IngredientRow, RecipeRow } from '../../src/recipes/rows/tables';
import { readJar } from '../../src/words/jar';

type Product = FeasibleDay['products'][number];

const METHODS = ['boiling-water', 'dial-gauge', 'weighted-gauge', 'atmospheric-steam'] as const;
const JARS = ['half-pint', 'pint', 'quart', 'half-gallon', '500 mL', '1 L', '12 oz'];
const ELEVATIONS = ['900 ft', '0 m', '1001 ft', '3001 ft', '6001 ft', '8001 ft', '10500 ft', '12500 ft'];
const AMOUNTS = ['30 lb', '9 kg', '1 lb', '400 lb'];

const pick = <T>(random: () => number, of: readonly T[]): T => of[Math.floor(random() * of.length)] as T;

/** A day of one recipe and one food; with other lots of its page, or a food beside it. */
export function dayOf(row: RecipeRow, food: string, seed: number): PlanDayInput {
  const random = seeded(seed);
  const jar = random() < 0.4 ? undefined : pick(random, JARS);
  const holds = Object.fromEntries(
    [...JARS.slice(0, 4), 'pint', ...(jar === undefined ? [] : [jar])].map((each) => [each, 7]),
  );
  const beside = row.ingredients.flatMap(({ food: other, role }) =>
    other !== undefined && other !== '@scope' && other !== food && (role === 'vegetable' || role === 'fruit')
      ? [other]
      : [],
  );
  const others = random() < 0.5 ? [...new Set(beside)] : [];
  const mixed = random() < 0.3 ? row.foods.filter((each) => each !== food && !others.includes(each)).slice(0, 1) : [];
  const raw = pick(random, AMOUNTS);
  const own = random() < 0.2 && raw === '30 lb' ? { ready: '29.5 lb' } : {};
  return {
    lots: [
      { food: nameOf(food), raw, ...own },
      ...[...others, ...mixed].map((each) => ({ food: nameOf(each), raw: '12 lb' })),
    ],
    kitchen: {
      elevation: pick(random, ELEVATIONS),
      hours: '14 h',
      hands: 3,
      burners: 6,
      pots: [{ volume: '20 quart', count: 3 }],
      canners: (random() < 0.5 ? METHODS : [pick(random, METHODS)]).map((method) => ({ method, holds, count: 2 })),
      dryer: { trays: 20, trayArea: '1 ft2' },
      freezeDryer: { trays: 5, trayArea: '1 ft2', ice: '12 lb' },
      freezer: { room: '300 L' },
      ...(random() < 0.3 ? { pantry: [{ item: 'citric acid', amount: '1 lb' }] } : {}),
    },
    products: [
      {
        recipe: row.id,
        ...(mixed.length === 0 || random() < 0.5 ? { from: nameOf(food) } : { from: [food, ...mixed].map(nameOf) }),
        ...(jar === undefined ? {} : { jar }),
        ...(random() < 0.3 ? { pack: pick(random, ['hot', 'raw'] as const) } : {}),
        ...(random() < 0.1 ? { syrup: 'heavy' as const } : {}),
        ...(random() < 0.1 ? { moisture: 0.45 } : {}),
      },
    ],
  } as PlanDayInput;
}

/** Foods that cooks put in the place of others. */
const NEIGHBORS = [
  'banana',
  'melon',
  'pumpkin',
  'white-peach',
  'tomato',
  'bell-pepper',
  'zucchini',
  'beef',
  'elderberry',
];

/** Every recipe with each food of its scope and one outside it, in an order that one in `step` of them is drawn from. */
export function* walk(step: number, seeds: number): Generator<{ row: RecipeRow; food: string; seed: number }> {
  let at = 0;
  for (const row of RECIPES) {
    const outside = NEIGHBORS.filter((food) => !row.foods.includes(food));
    for (const food of [...row.foods, outside[at % outside.length] as string]) {
      for (let seed = 0; seed < seeds; seed++) {
        at++;
        if (at % step === 0) yield { row, food, seed: at };
      }
    }
  }
}

const liters = (jar: string): number | undefined => {
  try {
    return valueIn(readJar(jar).volume, 'L');
  } catch {
    return undefined;
  }
};
const isNamed = (id: string | undefined, trade: string | undefined): boolean =>
  id !== undefined && id !== '@scope' && nameOf(id) === trade;
const MAIN = new Set(['fruit', 'vegetable', 'meat', 'fish']);
const KEPT = new Set(['acid', 'sugar', 'starch', 'pectin', 'salt']);
const KG = (mass: Quantity<'mass'>) => valueIn(mass, 'kg');
type Amount = Quantity<'mass'> | Quantity<'volume'>;
const sizeOf = (amount: Amount): { readonly kind: 'mass' | 'volume'; readonly value: number } =>
  isMass(amount) ? { kind: 'mass', value: KG(amount) } : { kind: 'volume', value: valueIn(amount, 'L') };

const whole = ({ batch }: RecipeRow): boolean =>
  batch.whole === true || batch.scale === 'one batch at a time' || batch.scale === 'whole batches';

/** Batches that the jars and the food of a product come to, by the page; a jar less for rounding up. */
function batchesOf(row: RecipeRow, product: Product): number {
  const { units, canning: jars, fromLots: from } = product;
  const [printed] = row.yields ?? [];
  const printedLiters = printed && liters(printed.jar);
  const each = jars === undefined ? undefined : liters(jars.jar);
  const byJars =
    printed === undefined || printedLiters === undefined || each === undefined
      ? 0
      : whole(row)
        ? units.ready / Math.ceil((printed.high * printedLiters) / each - 1e-9)
        : ((units.ready - 1) * each) / (printed.high * printedLiters);
  const own = from[0] && row.ingredients.find((line) => MAIN.has(line.role) && isNamed(line.food, from[0]?.food));
  const line = own || row.ingredients.find(({ food }) => food === '@scope');
  if (line?.amount === undefined) return byJars;
  const size = sizeOf(parseQuantity(line.most ?? line.amount) as Amount);
  return size.kind === 'volume' ? byJars : Math.max(byJars, KG(product.raw) / size.value);
}

/** The lines of a page that must not be lost, one of each choice. */
function keptLines(row: RecipeRow, pack: string): readonly (readonly IngredientRow[])[] {
  const lines = row.ingredients.filter(
    (line) => line.keep === true && line.optional !== true && KEPT.has(line.role) && (line.pack ?? pack) === pack,
  );
  const groups = new Map<string, IngredientRow[]>();
  lines.forEach((line, at) => {
    const key = line.choose ?? `line ${at}`;
    groups.set(key, [...(groups.get(key) ?? []), line]);
  });
  return [...groups.values()];
}

function proportionBroken(row: RecipeRow, product: Product): string[] {
  const batches = batchesOf(row, product);
  return keptLines(row, product.canning?.pack ?? 'hot').flatMap((choices) => {
    const enough = choices.some((line) => {
      const said = product.ingredients.filter(({ role }) => role === line.role);
      if (line.perJar !== undefined) return said.length > 0 && product.canning?.acidToAdd !== undefined;
      if (line.per?.of === 'water') return said.some(({ note }) => note?.includes(line.amount as string));
      const printed = line.most ?? line.amount;
      if (printed === undefined)
        return line.packages === undefined ? said.length > 0 : said.some(({ amount }) => amount);
      const least = sizeOf(parseQuantity(printed) as Amount);
      const per = line.per && sizeOf(parseQuantity(line.per.amount) as Amount);
      const times =
        per === undefined ? batches : (line.per?.of === 'raw' ? KG(product.raw) : KG(product.ready.likely)) / per.value;
      return said.some(({ amount, or }) =>
        [amount, or].some((each) => {
          const size = each && sizeOf(each);
          // weighed in place of measured: a liter of sugar or salt is at least 0.75 kg
          const floor = size?.kind === least.kind ? least.value : least.value * 0.75;
          return size !== undefined && size.value >= floor * times * (1 - 1e-6);
        }),
      );
    });
    const [line] = choices as [IngredientRow];
    return enough ? [] : [`${line.role} ${line.food ?? line.item} is not in proportion`];
  });
}

function processBroken(row: RecipeRow, input: PlanDayInput, product: Product): string[] {
  const { canning: jars, food, fromLots: from, ingredients, units } = product;
  if (jars === undefined) return [];
  const { jar, method, pack } = jars;
  const asked = { food, recipe: row.id, jar, method, elevation: input.kitchen.elevation } as Parameters<
    typeof testedProcess
  >[0];
  const found = testedProcess(pack === 'not stated' ? asked : { ...asked, pack: pack as 'hot' });
  if (!found.tested) return ['no tested process'];
  const low = ['vegetables in jars', 'soup', 'meat in jars', 'fish in jars'].includes(row.makes);
  const acid = row.ingredients.some(({ role, keep }) => role === 'acid' && keep === true);
  const perJar = found.acid?.where === 'each jar' ? ingredients.filter(({ role }) => role === 'acid') : undefined;
  const named = new Set(
    [...row.foods, ...row.ingredients.map((line) => line.food)]
      .filter((id) => id !== undefined && id !== '@scope')
      .map((id) => nameOf(id as string)),
  );
  return [
    ...(found.minutes === jars.minutes && found.pressure?.value === jars.pressure?.value
      ? []
      : ['minutes or pressure']),
    ...(method.endsWith('gauge') || !low || acid ? [] : ['low-acid food in boiling water']),
    ...(method !== 'atmospheric-steam' || jars.minutes <= 45 ? [] : ['too long for steam']),
    ...(perJar === undefined ||
    perJar.some(({ amount }) => amount && valueIn(amount as Quantity<'volume'>, 'tsp') >= units.ready / 4 - 1e-9)
      ? []
      : ['acid of each jar']),
    ...from.filter((share) => !named.has(share.food)).map((share) => `${share.food} is not on the page`),
    ...found.cautions
      .filter(({ severity }) => severity === 'danger')
      .filter(({ id }) => !product.cautions.some((each) => each.id === id))
      .map(({ id }) => `caution ${id} of the process`),
  ];
}

function workBroken(row: RecipeRow, product: Product): string[] {
  const { directions: steps, keeps, canning: jars, units } = product;
  const [printed] = row.yields ?? [];
  const size = printed && liters(printed.jar);
  const each = jars && liters(jars.jar);
  const alone = row.batch.scale === 'one batch at a time';
  const perBatch = printed && size && each ? Math.floor((printed.low * size) / each + 1e-9) : undefined;
  const blanch = row.steps.find((step) => step.do === 'blanch' && step.optional !== true);
  const pack = steps.findIndex((step) => step.startsWith('Pack'));
  const blanched = steps.findIndex((step) => step.includes('lanch'));
  const missing = (row.cautions ?? [])
    .map(recipeCaution)
    .filter(({ id }) => !product.cautions.some((got) => got.id === id));
  return [
    ...missing.map(({ id }) => `caution ${id} of the recipe`),
    ...(jars === undefined && keeps.some(({ processRecipe }) => processRecipe !== undefined)
      ? ['said to keep as if canned']
      : []),
    ...(jars !== undefined && row.madeOf === 'trimmings' ? ['trimmings are canned'] : []),
    ...(keeps.length === 0 ? ['nothing says where it keeps'] : []),
    ...(row.makes !== 'jerky' || steps.some((step) => step.includes('Heat the meat')) ? [] : ['jerky is not heated']),
    ...(row.makes !== 'jerky' || product.cautions.some(({ severity }) => severity === 'danger')
      ? []
      : ['jerky without a danger']),
    ...(row.makes === 'frozen' && blanch !== undefined && (blanched < 0 || (pack >= 0 && pack < blanched))
      ? ['not blanched first']
      : []),
    ...(alone && perBatch !== undefined && perBatch > 0 && units.promised % perBatch !== 0
      ? ['a part of a batch']
      : []),
    ...(units.promised <= units.likely && units.likely <= units.ready ? [] : ['units']),
  ];
}

function massBroken(input: PlanDayInput, plan: FeasibleDay): string[] {
  return input.lots.flatMap((lot) => {
    const food = (lot as { food: string }).food;
    const ofLot = (shares: readonly { readonly food: string; readonly raw: Quantity<'mass'> }[]) =>
      shares.filter((share) => share.food === food).reduce((sum, { raw }) => sum + KG(raw), 0);
    const used = plan.products
      .filter((each) => recipeOfId(each.recipe)?.madeOf !== 'trimmings')
      .flatMap(({ fromLots: from }) => from);
    const raw = KG(parseQuantity(lot.raw as string) as Quantity<'mass'>);
    const all = ofLot(used) + ofLot(plan.leftFresh);
    return Math.abs(all - raw) > 1e-3 * raw + 1e-3 ? [`${food}: ${all} kg of ${raw}`] : [];
  });
}

/** Every rule that a plan breaks; none where it is safe by these. */
export function unsafe(input: PlanDayInput, plan: FeasibleDay): string[] {
  return [
    ...plan.products.flatMap((product) => {
      const row = recipeOfId(product.recipe) as RecipeRow;
      return [...processBroken(row, input, product), ...proportionBroken(row, product), ...workBroken(row, product)];
    }),
    ...massBroken(input, plan),
    ...checkSchedule(plan).broken.map(({ text }) => `order of work: ${text}`),
  ];
}
