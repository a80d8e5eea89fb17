import { describe, expect, test } from 'vitest';
import { cardsOf } from '../../src/sheet/cards';
import { clockOf } from '../../src/sheet/clock';
import { measureIn } from '../../src/sheet/measure';
import { planOf } from '../plan/fullKitchen';
import { FEASIBLE_NAMES, feasiblePlan } from './days';

const made = (name: (typeof FEASIBLE_NAMES)[number]) => {
  const plan = feasiblePlan(name);
  return { plan, cards: cardsOf({ plan, clock: clockOf(plan.schedule), measure: measureIn('us') }) };
};
const lineOf = (
  { lines }: { readonly lines: readonly { readonly label: string; readonly text: string }[] },
  label: string,
) => lines.find((line) => line.label === label)?.text ?? '';

describe.each(FEASIBLE_NAMES)('%s', (name) => {
  const { plan, cards } = made(name);
  test('a card for each product, with the figures of its process', () => {
    expect(cards.length).toBe(plan.products.length);
    plan.products.forEach(({ canning: jars, drying: trays, units }, index) => {
      const card = cards[index] as (typeof cards)[number];
      expect(card.sub).toContain(`likely ${units.likely}`);
      if (jars !== undefined) {
        expect(card.big[0]).toBe(`${jars.minutes} min`);
        expect(card.big[1]).toBe(jars.pressure === undefined ? undefined : `${jars.pressure.value} psi`);
        expect(lineOf(card, 'LAST JAR, PART FULL')).toContain('never the canner');
        expect(lineOf(card, 'IF')).toContain('start the whole time again');
      }
      if (jars?.acidToAdd !== undefined) expect(lineOf(card, 'ACID')).toContain(jars.acidToAdd);
      if (trays?.test !== undefined) expect(lineOf(card, 'DONE')).toContain(trays.test);
    });
  });
  test('every ingredient of the plan is on its card', () => {
    plan.products.forEach(({ ingredients }, index) => {
      const card = cards[index] as (typeof cards)[number];
      for (const { what, forSyrup, role } of ingredients)
        if (forSyrup) expect(lineOf(card, 'SYRUP')).toContain(role === 'sugar' ? 'sugar' : 'water');
        else expect(lineOf(card, 'IN')).toContain(what);
    });
  });
  test('no line is empty, and none is on the card twice', () => {
    for (const { lines } of cards) {
      expect(lines.every(({ text }) => text !== '')).toBe(true);
      expect(new Set(lines.map(({ label }) => label)).size).toBe(lines.length);
    }
  });
});
test('a recipe that is never doubled says so, and what must not change; steps end where the jars are filled', () => {
  const { plan, cards } = made('the example');
  const card = cards[plan.products.findIndex(({ makes }) => makes === 'jam')] as (typeof cards)[number];
  expect(lineOf(card, 'NEVER CHANGE')).toContain('one batch at a time: never double it');
  expect(lineOf(card, 'STEPS')).toMatch(/Fill hot into hot jars$/);
  expect(lineOf(card, 'STEPS')).not.toContain('Change none');
});
test('what the page leaves to the cook, with its printed amount where it has one', () => {
  const plan = planOf('apple', { make: 'sauce', jar: 'pint', method: 'boiling-water' });
  const [sauce] = cardsOf({ plan, clock: clockOf(plan.schedule), measure: measureIn('us') });
  expect(lineOf(sauce as never, 'IF YOU LIKE')).toBe('sugar, to taste (1/8 cup to 1 qt prepared)');
  expect(lineOf(sauce as never, 'IN')).not.toContain('sugar');
});
test('the pressure that falls, and the canner that cools by itself', () => {
  const [card] = made('two days under pressure').cards;
  expect(lineOf(card as never, 'IF')).toContain('the pressure falls: bring it back');
});
test('a crock: the weeks it stands, under the brine', () => {
  const [card] = made('a crock').cards;
  expect(lineOf(card as never, 'CROCK')).toMatch(/\d+ (weeks|days|months).* at least .*under the brine/);
  expect(lineOf(card as never, 'IN')).toContain('salt');
});

test('a metric page has the amounts in its own units, and what is never less', () => {
  const plan = feasiblePlan('a metric day');
  const acid = { what: 'bottled lemon juice', role: 'acid', amount: { value: 250, unit: 'mL' } };
  const lines = (units: 'us' | 'metric', own: object) => {
    const products = [{ ...plan.products[0], ingredients: [{ ...acid, ...own }] }] as never;
    const pen = { plan: { ...plan, products }, clock: clockOf(plan.schedule), measure: measureIn(units) };
    return lineOf(cardsOf(pen)[0] as never, 'IN');
  };
  const printed = { printed: '2 tbsp in one batch', neverLess: true };
  expect(lines('us', printed)).toContain('(2 tbsp in one batch, never less)');
  expect(lines('metric', printed)).toMatch(/250 mL.* bottled lemon juice \(never less\)$/);
  expect(lines('metric', { ...printed, note: 'as you say' })).toMatch(/\(never less, as you say\)$/);
});
test('what is never less is never rounded below', () => {
  const plan = feasiblePlan('the example');
  const pectin = { what: 'pectin', role: 'pectin', amount: { value: 4.1, unit: 'tbsp' } };
  const line = (own: object) => {
    const products = [{ ...plan.products[0], ingredients: [{ ...pectin, ...own }] }] as never;
    const pen = { plan: { ...plan, products }, clock: clockOf(plan.schedule), measure: measureIn('us') };
    return lineOf(cardsOf(pen)[0] as never, 'IN');
  };
  expect([line({}), line({ neverLess: true })]).toEqual([
    expect.stringContaining('4 tbsp'),
    expect.stringContaining('4 1/2 tbsp'),
  ]);
});
test('leather is spread on its card, as deep as its page says', () => {
  const { plan, cards } = made('the example');
  const leather = cards[plan.products.findIndex(({ makes }) => makes === 'leather')];
  expect(lineOf(leather as never, 'STEPS')).toMatch(/Puree · Spread 1\/8 in deep · Roll up$/);
});
test('what is at choice twice is said once', () => {
  const plan = planOf('venison', { make: 'meat in jars', jar: 'pint', method: 'weighted-gauge' });
  const [card] = cardsOf({ plan, clock: clockOf(plan.schedule), measure: measureIn('us') });
  const free = lineOf(card as never, 'IF YOU LIKE').split(' · ');
  expect(free.filter((each) => each.startsWith('salt')).length).toBe(1);
});
