import { printedAmount } from '../plan/makes/printedAmount';
import { kept } from '../plan/makes/recipe';
import type { Ingredient, JarWork, PlannedProduct } from '../plan/request/plannedProduct';
import { ruleFigures } from '../process/canningRules';
import { ingredientOf } from '../recipes/ingredient';
import { mustKeepOf, recipeOfId } from '../recipes/rows/rows';
import type { RecipeRow } from '../recipes/rows/tables';
import { stepText, stepTextMetric } from '../recipes/step';
import { capital } from './amounts';
import { letter } from './clock';
import { spanText } from './measure';
import { counted, depthOf, type Pen } from './pen';
import type { Card, Line } from './sheet';
import { syrupOnCard } from './syrup';
import { waterOver } from './timers';
import { say, type Text } from './words';

/** A card for each product, to tape over its station. */
export const cardsOf = (pen: Pen): Card[] => pen.plan.products.map((product, index) => cardOf(pen, product, index));

function cardOf(pen: Pen, product: PlannedProduct, index: number): Card {
  const { name, recipe, units, canning: jars } = product;
  const row = recipeOfId(recipe);
  const keeps = keepsOf(product);
  return {
    letter: letter(index),
    title: capital(name),
    sub: [
      ...(row === undefined || row.name === name ? [] : [row.name]),
      ...(keeps === '' ? [] : [say('card.keeps', { keeps })]),
      say('card.units', {
        likely: units.likely,
        ready: counted(units.ready, units.ready === 1 ? units.unit : units.plural),
      }),
    ].join(say('dot')),
    big: jars === undefined ? bigOfTrays(pen, product) : bigOfJars(pen, jars),
    lines: [
      ...(jars === undefined ? [] : jarLines(pen, jars)),
      ...trayLines(pen, product),
      ...packLines(pen, product),
      ...crockLines(pen, product),
      ...ingredientLines(pen, product),
      ...freeLines(pen, product),
      ...potLines(pen, product),
      ...stepLines(pen, product),
      ...(jars === undefined ? [] : [line('label.last', say('card.last'))]),
    ].filter(({ text }) => text !== ''),
  };
}
const line = (label: Text, text: string): Line => ({ label: say(label), text });

const PLACES: Readonly<Record<string, Text>> = {
  shelf: 'keeps.shelf',
  refrigerator: 'keeps.refrigerator',
  freezer: 'keeps.freezer',
  crock: 'keeps.crock',
};
const keepsOf = ({ keeps }: PlannedProduct): string =>
  [
    ...new Set(
      keeps.map(({ place, low, high }) => {
        const code = PLACES[place];
        const where = code === undefined ? place : say(code);
        return high === undefined ? where : say('keeps.for', { place: where, time: spanText(low, high) });
      }),
    ),
  ].join(say('keeps.or'));

const bigOfJars = ({ measure }: Pen, { minutes, pressure }: JarWork): string[] => [
  say('card.minutes', { minutes }),
  ...(pressure === undefined ? [] : [say('card.pressure', { pressure: measure.pressure(pressure) })]),
];
const bigOfTrays = ({ measure }: Pen, { drying: trays }: PlannedProduct): string[] =>
  trays?.temperature === undefined ? [] : [measure.temperature(trays.temperature)];

function jarLines({ measure }: Pen, jars: JarWork): Line[] {
  const { headspace, fillVolume, netMass, acidToAdd: acid, method, pressure, loads, sterilizeJars } = jars;
  const net = netMass === undefined ? '' : say('card.net', { weight: measure.mass(netMass, 'down') });
  const jar = say('card.jar', { headspace: measure.length(headspace), volume: measure.volume(fillVolume) });
  const from =
    pressure !== undefined
      ? say('card.gauge', { vent: ruleFigures('vent').low })
      : method === 'atmospheric-steam'
        ? say('card.steam')
        : say('card.boil', { water: waterOver(jars, measure) });
  const runs = loads.map(({ canner, count: many, jarsPerLoad, sharedWith }) => {
    const text =
      many === 1 ? say('load.one', { count: jarsPerLoad }) : say('load.many', { loads: many, count: jarsPerLoad });
    const shared = sharedWith.length === 0 ? '' : say('card.shared', { names: sharedWith.join(say('and')) });
    return `${say('card.loads', { loads: text, canner })}${shared}`;
  });
  const stops =
    pressure !== undefined ? ['if.pressure', 'if.cool'] : [method === 'atmospheric-steam' ? 'if.steam' : 'if.boil'];
  return [
    line('label.jar', `${sterilizeJars ? `${say('card.sterilize')}${say('dot')}` : ''}${jar}${net}`),
    ...(acid === undefined ? [] : [line('label.acid', say('card.acid', { acid }))]),
    line('label.canner', [from, ...runs].join(say('dot'))),
    line('label.if', [...(stops as Text[]), 'if.lost' as const].map((code) => say(code)).join(say('dot'))),
  ];
}

function trayLines({ measure }: Pen, { drying: trays }: PlannedProduct): Line[] {
  if (trays === undefined) return [];
  const { perTray, trays: count, hours, stopWeight, test, dried } = trays;
  const weight = measure.mass(perTray, 'down');
  const time = hours === undefined ? '' : say('card.hours', { low: hours.low.value, high: hours.high.value });
  const done = [
    ...(stopWeight === undefined
      ? []
      : [say('card.stop', { low: measure.mass(stopWeight.low, 'down'), high: measure.mass(stopWeight.high, 'down') })]),
    ...(test === undefined ? [] : [say('card.test', { test })]),
    say('card.dried', { weight: measure.masses(dried) }),
  ];
  return [
    line(
      'label.trays',
      `${say(count === 1 ? 'card.one-tray' : 'card.tray', { weight, count: say('tray.many', { count }) })}${time}`,
    ),
    line('label.done', done.join(say('dot'))),
  ];
}

function packLines({ measure }: Pen, { packs, headspace: inJar }: PlannedProduct): Line[] {
  if (inJar !== undefined) return [line('label.jar', say('card.jar-cold', { headspace: measure.length(inJar) }))];
  if (packs === undefined) return [];
  const { packSize: size, headspace } = packs;
  const box = headspace === undefined ? '' : say('card.box', { headspace: measure.length(headspace) });
  return [line('label.packs', `${say('card.packs', { size: measure.mass(size) })}${box}`)];
}

/** How long the crock stands, as the order of work has it. */
function crockLines({ plan }: Pen, { name }: PlannedProduct): Line[] {
  const crock = plan.schedule.tasks.find(
    ({ kind, forProducts: products }) => kind === 'ferment' && products.includes(name),
  );
  if (crock === undefined) return [];
  const time = spanText(undefined, { value: crock.leastMinutes ?? crock.endMinute - crock.startMinute, unit: 'min' });
  return [line('label.crock', say('card.crock', { time }))];
}

function ingredientLines(pen: Pen, product: PlannedProduct): Line[] {
  const { measure } = pen;
  const { ingredients } = product;
  const text = ({ what, role, amount, or, pieces, counted: of, printed, neverLess, note }: Ingredient): string => {
    // acid, and what the page needs, is never too little
    const rounding = role === 'acid' || neverLess === true ? 'up' : 'nearest';
    const much =
      amount === undefined
        ? `${pieces ?? ''} ${of ?? ''}`.trim()
        : `${measure.amount(amount, rounding)}${or === undefined ? '' : ` (${measure.amount(or, rounding)})`}`;
    // on a metric page the amount stands there in the cook's own units
    const page = amount !== undefined && measure.massUnit === 'kg' ? undefined : printed;
    const notes = [page, neverLess === true ? say('ingredient.least') : undefined, note];
    const own = notes.filter((each) => each !== undefined).join(say('comma'));
    return `${say('ingredient', { amount: much, what })}${own === '' ? '' : say('ingredient.note', { note: own })}`;
  };
  const all = ingredients.filter(({ forSyrup }) => forSyrup !== true);
  const syrup = syrupOnCard(pen, product);
  return [
    ...(syrup === undefined ? [] : [line('label.syrup', syrup)]),
    ...(all.length === 0 ? [] : [line('label.in', all.map(text).join(say('dot')))]),
  ];
}

/** What the page leaves to the cook, as it prints it: no plan counts on it. */
function freeLines({ measure }: Pen, { recipe, name }: PlannedProduct): Line[] {
  const row = recipeOfId(recipe);
  const free = (row?.ingredients ?? []).filter(({ optional, food }) => optional === true && food !== '@scope');
  const notes = new Map<string, string[]>();
  for (const each of free) {
    const { what } = ingredientOf(row as RecipeRow, each, name, 1);
    const note = printedAmount(each);
    notes.set(what, [...(notes.get(what) ?? []), ...(note === '' ? [] : [note])]);
  }
  const texts = [...notes].map(([what, own]) =>
    own.length === 0
      ? what
      : `${what}${say(measure.massUnit === 'kg' ? 'ingredient.page' : 'ingredient.note', { note: own.join(say('or')) })}`,
  );
  return texts.length === 0 ? [] : [line('label.free', texts.join(say('dot')))];
}

function potLines({ measure }: Pen, { cooking: pots }: PlannedProduct): Line[] {
  if (pots === undefined || pots.batches.length === 0) return [];
  const text = pots.batches.map(({ pot, count: batches, mostAtOnce: most }) =>
    say('card.pots', {
      batches: batches === 1 ? say('batch.one') : say('batch.many', { count: batches }),
      pot,
      volume: measure.volume(most, 'down'),
      minutes: pots.minutesEach,
    }),
  );
  return [line('label.pot', text.join(say('dot')))];
}

/** What to do in short, without what the card says in a line of its kind; and what must not be changed. */
function stepLines({ measure }: Pen, { recipe, directions: steps, canning: jars }: PlannedProduct): Line[] {
  const row = recipeOfId(recipe);
  const pack = jars?.pack ?? 'hot';
  const must = row === undefined ? [] : mustKeepOf(row, pack);
  const printed = new Set(row?.steps.map((step) => stepText(step)));
  // after the recipe's own steps a canned product has how jars are filled, then what the lines of the card say
  const fill = jars === undefined || row === undefined ? -1 : steps.findIndex((step) => !printed.has(step));
  const own = fill < 0 ? steps : steps.slice(0, fill + 1);
  const kept_ = new Set(row === undefined ? [] : kept(row, pack));
  const said = own.filter((step) => !kept_.has(step));
  const all = row === undefined ? said : withSpreading(row, said, measure).map(inUnits(row, measure));
  return [
    line('label.steps', all.map((step) => (step.endsWith('.') ? step.slice(0, -1) : step)).join(say('dot'))),
    line(
      'label.keep',
      [...must, ...(row?.batch.scale === 'one batch at a time' ? [say('card.batch')] : [])].join(say('dot')),
    ),
  ];
}

/** On a metric page the steps of a recipe have their sizes and temperatures in both units. */
function inUnits({ steps }: RecipeRow, { massUnit }: Pen['measure']): (step: string) => string {
  const metric = new Map(massUnit === 'kg' ? steps.map((step) => [stepText(step), stepTextMetric(step)]) : []);
  return (step) => metric.get(step) ?? step;
}

/** A plan counts its own trays, and leaves out how the page spreads: here its depth stands in its place again. */
function withSpreading(row: RecipeRow, said: readonly string[], measure: Pen['measure']): readonly string[] {
  const depth = depthOf(row.id, measure);
  const texts = row.steps.map(stepText);
  const at = row.steps.findIndex((step) => step.do === 'spread');
  if (depth === undefined || said.includes(texts[at] as string)) return said;
  const after = said.findIndex((step) => texts.indexOf(step) > at);
  const place = after < 0 ? said.length : after;
  return [...said.slice(0, place), say('step.spread', { depth }), ...said.slice(place)];
}
