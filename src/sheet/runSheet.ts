import { withPlan } from '../plan/answer/withPlan';
import type { DayPlan, FeasibleDay, InfeasibleDay, MostPromised, ToReady } from '../plan/request/dayPlan';
import type { AimWeights } from '../plan/request/planFields';
import type { PlannedProduct } from '../plan/request/plannedProduct';
import { isMass } from '../quantity/fields';
import { formatQuantity } from '../quantity/formatQuantity';
import type { Quantity } from '../quantity/types';
import { source } from '../sources/source';
import { capital, counted, hours, price, volume, weight } from './amounts';
import { clockBlock } from './clock';
import { costBlock } from './costs';
import { escapeTexts } from './escape';
import { limitsBlock } from './limitsBlock';
import { bullet, bullets, table } from './markdown';
import { productBlock } from './productBlock';

/**
 * A day's plan as a run sheet in Markdown: what to have at hand, then each product step by step, what is left over
 * or left out and why, what limited the day, the cautions, and the sources. It reads as plain text as well.
 *
 * Amounts are in kitchen fractions, or in grams and millilitres where the lots are weighed so: acid and times rounded
 * up, weights to stop drying at rounded down.
 *
 * Names that the caller gave stay as they are: no markup, link or tag in them is one on the page.
 *
 * @param plan - the answer of `planDay`
 * @returns Markdown
 * @throws StillroomError WRONG_TYPE for anything that is no answer of `planDay`
 *
 * @example
 * ```ts
 * import { planDay } from 'stillroom/plan';
 * import { runSheet } from 'stillroom/sheet';
 *
 * const plan = planDay({
 *   lots: [{ food: 'apple', raw: '20 lb' }],
 *   kitchen: { elevation: '500 m', hours: '6 h', dryer: { trays: 6, trayArea: '200 in2' } },
 *   products: [{ make: 'dried', from: 'apples' }],
 * });
 * runSheet(plan).split('\n')[0]; // => '# Run sheet'
 * ```
 */
export function runSheet(plan: DayPlan): string {
  return withPlan('plan', plan, (given) => {
    const shown = escapeTexts(given);
    return shown.feasible ? feasibleSheet(shown) : infeasibleSheet(shown);
  });
}

function infeasibleSheet({ reason, conflicts, most, leftOut, cautions }: InfeasibleDay): string {
  return blocks([
    '# Run sheet: no plan',
    `There is no plan for this day: ${reason.text}.`,
    bullets(conflicts.map(capital)),
    ...(most.length === 0 ? [] : ['With everything else as you asked, you can count on:', bullets(most.map(instead))]),
    ...leftOutBlock(leftOut),
    '## Cautions',
    bullets(cautions.map(({ text }) => text)),
  ]);
}

const instead = ({ name, least, promised, proven }: MostPromised): string =>
  `${capital(name)}: ${promised === 0 ? 'none' : `${proven ? '' : 'at least '}${promised}`}, not ${least}.`;

const blocks = (parts: readonly string[]): string => `${parts.filter((part) => part !== '').join('\n\n')}\n`;

function feasibleSheet(plan: FeasibleDay): string {
  const { products, invented, elevation, work } = plan;
  return blocks([
    '# Run sheet',
    invented
      ? '**An invented example**: people, place and prices are made up; the figures of food and heat are not.'
      : '',
    `Kitchen at ${formatQuantity(elevation)}. About ${hours(work.hands.minutes)} of work for the hands, of ${hours(work.hands.available)} there are. Aim: ${aimOf(plan)}; ${proof(plan)}`,
    products.length === 0
      ? 'Nothing you asked for can be made today.'
      : table(['make', 'promised', 'likely', 'ready for', 'out of'], products.map(glance)),
    products.length === 0
      ? ''
      : 'Count on the jars and packs promised: they are the low end of the published yields. Have jars, lids and trays ready for the high end.',
    ...readyBlock(plan.ready),
    ...clockBlock(plan),
    ...products.flatMap((product, index) => productBlock(product, index + 1)),
    ...leftFreshBlock(plan),
    ...leftOutBlock(plan.leftOut),
    plan.notMade.length === 0 ? '' : '## Not made today',
    bullets(plan.notMade.map(({ name, reason }) => `${capital(name)}: ${reason.text}.`)),
    ...limitsBlock(plan),
    ...costBlock(plan),
    '## Cautions',
    bullets(cautionsOf(plan)),
    '## Where the figures come from',
    sourcesOf(plan),
  ]);
}

/** Each caution once: the day's own first, then those of products, naming them where only one or two are meant. */
function cautionsOf({ cautions, products }: FeasibleDay): string[] {
  const general = cautions.map(({ text }) => text);
  const meant = new Map<string, string[]>();
  for (const product of products) {
    for (const { text } of product.cautions) {
      if (!general.includes(text)) meant.set(text, [...(meant.get(text) ?? []), product.name]);
    }
  }
  const own = [...meant].map(([text, names]) =>
    names.length > FEW ? text : `${capital(names.join(' and '))}: ${text}`,
  );
  return [...general, ...own];
}
/** The most products that are named before a caution of theirs. */
const FEW = 2;

const proof = ({ provenBest, gap, nothingMade }: FeasibleDay): string =>
  nothingMade !== undefined
    ? `${nothingMade.text}.`
    : provenBest
      ? 'no better plan exists for these figures.'
      : `a plan up to ${(Math.ceil(1000 * gap) / 10).toFixed(1)} % better may exist.`;

const glance = ({ name, units, from, trimmings }: PlannedProduct): string[] => [
  capital(name),
  counted(units.promised, units.unit, units.plural),
  String(units.likely),
  String(units.ready),
  from
    .map(({ lot, raw }) => `${weight(raw, 'up')} ${trimmings === undefined ? 'trimmings of ' : ''}${lot}`)
    .join(' + '),
];

function readyBlock(ready: readonly ToReady[]): string[] {
  if (ready.length === 0) return [];
  const amount = (value: ToReady['amount']): string =>
    typeof value === 'number'
      ? String(value)
      : isMass(value as Quantity)
        ? weight(value as Quantity<'mass'>, 'up')
        : volume(value as Quantity<'volume'>, 'up');
  return [
    '## Have at hand',
    table(
      ['what', 'amount', 'to buy'],
      ready.map((line) => [line.what, amount(line.amount), line.short === undefined ? '' : amount(line.short)]),
    ),
  ];
}

function leftFreshBlock({ leftFresh }: FeasibleDay): string[] {
  if (leftFresh.length === 0) return [];
  return ['## Left fresh', bullets(leftFresh.map(({ lot, raw }) => `${weight(raw)} of ${lot}.`))];
}

function leftOutBlock(leftOut: FeasibleDay['leftOut']): string[] {
  if (leftOut.length === 0) return [];
  return [
    '## Left out, and why',
    bullets(
      leftOut.map(
        ({ name, reason, instead }) =>
          `${capital(name)}: ${reason.text}. Instead: ${instead.map(({ text }) => text).join('; or ')}.`,
      ),
    ),
  ];
}

const WEIGHED: Readonly<Record<keyof AimWeights, string>> = {
  worth: 'for each unit of worth',
  waste: 'for each kg used',
  cost: 'against each unit of money',
  hours: 'against each hour of hands',
};

/** The aim in words: a cost with its figure, weights with what they are for. */
function aimOf({ aim, objective, cost, products }: FeasibleDay): string {
  if (aim === 'least cost' && cost !== undefined && products.length > 0) {
    // up to the cent: a jar never looks cheaper than it is
    const each = { ...cost.total, value: Math.ceil(-100 * objective - 1e-6) / 100 };
    return `${aim} (${price(each)} for each jar or pack promised)`;
  }
  if (typeof aim === 'string') return aim;
  const weights = (Object.keys(WEIGHED) as (keyof AimWeights)[]).flatMap((key) => {
    const weight = aim[key] ?? 0;
    return weight > 0 ? [`${weight} ${WEIGHED[key]}`] : [];
  });
  return `a mix (${weights.join(', ')})`;
}

/** The register's citation of every source that a figure of the plan rests on. */
function sourcesOf({ basis }: FeasibleDay): string {
  const ids = [...new Set(basis.flatMap((line) => (line.source === undefined ? [] : [line.source])))].sort();
  const cited = ids.map((id) => {
    const { title, publisher, year } = source(id);
    return bullet(
      `${title}.${publisher === 'none' ? '' : ` ${publisher}`}${year === undefined ? '' : `, ${year}`}${publisher === 'none' ? '' : '.'}`,
    );
  });
  const practice = [
    ...new Set(basis.filter(({ kind }) => kind === 'common-practice').map(({ of, note = of }) => note)),
  ];
  const memory = [...new Set(basis.filter(({ kind }) => kind === 'recalled').map(({ of, note = of }) => note))];
  return [
    ...cited,
    ...(practice.length === 0 ? [] : [bullet(`Common practice, no source: ${practice.join('; ')}.`)]),
    ...(memory.length === 0 ? [] : [bullet(`Recalled, still to be read in a copy: ${memory.join('; ')}.`)]),
  ].join('\n');
}
