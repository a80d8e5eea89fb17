import { describe, expect, test } from 'vitest';
import { formsIn } from '../../src/foods/isWithin';
import { formName, nameOf } from '../../src/foods/tables';
import { jarCaution } from '../../src/jars/cautions';
import { headspaceFor } from '../../src/jars/headspaceFor';
import { checkHeadspace, checkSeal, loadsFor, sealVacuum } from '../../src/jars/index';
import {
  cannerLoadRow,
  cannerRow,
  containerVacuumRow,
  containerVacuumRows,
  headspaceRow,
  headspaceRows,
  headspaceScopeRow,
  headspaceScopeRows,
  leastLoadRow,
  leastLoadRows,
  loadRows,
  practiceRow,
  sealRows,
  sealRuleRow,
  vacuumFactRow,
  vacuumFactRows,
} from '../../src/jars/tables';
import { processRows } from '../../src/process/tables';
import { convert } from '../../src/quantity/index';
import { JAR_SIZES } from '../../src/words/jar';
import { checkTables, expectFolder, readTable } from '../helpers/tables';

const TABLES = {
  headspace: headspaceRow(),
  'headspace-scopes': headspaceScopeRow(),
  'canner-loads': cannerLoadRow(),
  canners: cannerRow(),
  'least-loads': leastLoadRow(),
  'seal-rules': sealRuleRow(),
  'vacuum-facts': vacuumFactRow(),
  'container-vacuums': containerVacuumRow(),
  practice: practiceRow(),
} as const;
checkTables('jars', TABLES);
test('each file has its schema here', () => expectFolder('jars', Object.keys(TABLES)));

test.each(Object.keys(TABLES))('the ids of %s are there once, and least is not above most', (name) => {
  const rows: { id: string; least?: number; most?: number; least_in?: number; most_in?: number }[] = readTable(
    'jars',
    name,
  ).rows;
  expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
  for (const { least, most, least_in, most_in } of rows) {
    if (least !== undefined) expect(least).toBeLessThanOrEqual(most ?? least);
    if (least_in !== undefined) expect(least_in).toBeLessThanOrEqual(most_in as number);
  }
});

test('a load names a jar size', () => {
  for (const { jar } of [...loadRows, ...leastLoadRows]) expect(JAR_SIZES).toContain(jar);
});

test('a caution that is not there is our own mistake', () => {
  expect(() => jarCaution('nothing')).toThrow('no row nothing');
});

describe('the foods of the headspace rules', () => {
  test('each rule serves foods of the pantry, and each row has a rule', () => {
    const rules = new Set(headspaceRows.map(({ rule }) => rule));
    expect(new Set(headspaceScopeRows.map(({ rule }) => rule))).toEqual(rules);
    for (const { foods = [], forms = [] } of headspaceScopeRows) {
      expect(foods.length + forms.length).toBeGreaterThan(0);
      for (const food of foods) expect(nameOf(food)).toBeTruthy();
      for (const form of forms) expect(formName(form)).toBeTruthy();
    }
  });

  test('no food and form has two rules', () => {
    const served = new Map<string, string>();
    for (const { rule, foods = ['any'], forms = [], withoutForm } of headspaceScopeRows) {
      const all = forms.length === 0 || withoutForm === true ? ['', ...forms] : forms;
      for (const key of foods.flatMap((food) => all.map((form) => `${food}, ${form}`))) {
        expect([key, served.get(key) ?? rule]).toEqual([key, rule]);
        served.set(key, rule);
      }
    }
  });

  // a rule answers for a food only where the tested recipes for it agree
  test.each(processRows)('a rule agrees with the process $id, or does not answer', ({ food, form, headspace }) => {
    for (const each of formsIn(form)) {
      const published = headspaceFor(food, each);
      if (published === undefined) continue;
      expect(headspace).toBeGreaterThanOrEqual(published.least);
      expect(headspace).toBeLessThanOrEqual(published.most);
    }
  });
  test('that test looks at many rows', () => {
    const agreed = processRows.filter(({ food, form }) => headspaceFor(food, form) !== undefined);
    expect(agreed.length).toBeGreaterThan(60);
  });
});

/** A food of each rule, as people ask for it. */
const ASKED: Readonly<Record<string, string>> = {
  jam: 'jam',
  fruit: 'fruit',
  tomato: 'tomatoes',
  pickle: 'pickles',
  'low-acid': 'low-acid',
  vegetable: 'vegetables',
  meat: 'red meats',
  poultry: 'poultry',
  swelling: 'some vegetables and meats',
  juice: 'fruit juices',
  grape: 'whole grapes',
  'pie-filling': 'pie filling',
};

describe('every row is read', () => {
  test.each(headspaceRows)('headspace of $printed ($source)', (row) => {
    for (const value of [row.least_in, row.most_in]) {
      const answer = checkHeadspace({ food: ASKED[row.rule] as string, measured: { value, unit: 'in' } });
      expect(answer).toMatchObject({ known: true, verdict: 'right' });
      expect(answer.basis).toContainEqual(
        expect.objectContaining({
          source: row.source,
          locator: row.locator,
          of: 'leastHeadspace',
          note: `headspace of ${row.printed}`,
        }),
      );
    }
  });

  test('the copies that print one rule agree, so that every rule has a headspace that all allow', () => {
    for (const { foods, forms } of headspaceScopeRows) {
      const published = headspaceFor(foods?.[0], foods === undefined ? forms?.[0] : undefined);
      if (published !== undefined) expect(published.least).toBeLessThanOrEqual(published.most);
    }
  });

  test.each(loadRows)('a load of $jar jars in a $canner canner ($obtained, $source)', (row) => {
    const canner = { usual: 'boiling-water', small: 'small pressure', large: 'large pressure' }[row.canner];
    const { perLoad, basis } = loadsFor({ jars: row.most, jar: row.jar, canner });
    expect(perLoad).toBe(row.most);
    // a recalled row is never what an answer stands on
    expect(basis.some(({ source }) => source === row.source)).toBe(row.obtained !== 'memory');
  });

  test.each(leastLoadRows)('least pressure load of $jar jars', ({ jar: size, least }) => {
    const small = (jars: number) =>
      loadsFor({ jars, jar: size, canner: 'pressure' }).cautions.some(({ id }) => id === 'small-pressure-load');
    expect(small(least)).toBe(false);
    expect(small(least - 1)).toBe(true);
  });

  test.each(sealRows)('the rule $id says its figures and is part of an answer', (row) => {
    const words: Record<string, string> = {
      'freeze-instead': '1 1/2',
      'check-monthly': 'once',
      'half-the-liquid': 'half the liquid',
    };
    const kitchen = words[row.id] ?? `${row.least ?? ''}`;
    expect(row.text).toContain(kitchen);
    if (row.most !== row.least) expect(row.text).toContain(`${row.most}`);
    const answers = [
      checkSeal({ sinceProcessing: '1 h', buttonDown: true }),
      checkSeal({ sinceProcessing: '20 h', buttonDown: true }),
      checkSeal({ sinceProcessing: '20 h', buttonDown: false }),
      checkSeal({ sinceProcessing: '20 h', lid: 'flat', ringsWhenTapped: false, buttonDown: true }),
      checkSeal({ sinceProcessing: '20 h', lid: 'bulging' }),
      ...[0, 0.2, 0.6].map((liquidLost) =>
        checkHeadspace({ food: 'jam', measured: '1/4 in', when: 'after processing', hasSealed: true, liquidLost }),
      ),
    ];
    expect(answers.some((each) => 'next' in each && each.next.includes(row.text))).toBe(true);
  });

  test.each(vacuumFactRows.filter(({ value }) => value !== undefined))('$text', ({ id, value = 0 }) => {
    // each published or recalled figure against the exact units and the customary share
    const exact: Record<string, [number, number]> = {
      'inhg-per-psi-rule': [convert('1 psi', 'inHg').value, 0.04],
      'inhg-per-psi': [convert('1 psi', 'inHg').value, 5e-6],
      'normal-atmosphere-psi': [convert('1 atm', 'psi').value, 0.05],
      'normal-atmosphere-inhg': [convert('1 atm', 'inHg').value, 0.005],
      'inspection-step': [1 / 32, 0],
      'least-share': [6, 0],
    };
    const [wanted, tolerance] = exact[id] as [number, number];
    expect(Math.abs(value - wanted)).toBeLessThanOrEqual(tolerance);
  });

  test('what too little and too much headspace do is a published fact that the check cites', () => {
    const words = vacuumFactRows.filter(({ value }) => value === undefined).map(({ id }) => id);
    expect(words).toEqual(['gross-and-net', 'too-little-or-much']);
    expect(checkHeadspace({ food: 'jam', measured: '1 in' }).basis).toContainEqual(
      expect.objectContaining({ source: 'fda-lacf-guide', locator: 'headspace section' }),
    );
  });

  test('the vacuums published for cans are what a jar closed at 40 to 80 degC draws by the model', () => {
    for (const { least, most, unit } of containerVacuumRows) {
      const at = (value: number) =>
        convert(sealVacuum({ closingTemperature: { value, unit: 'degC' }, elevation: '0 m' }).vacuum, 'inHg').value;
      expect(convert({ value: least, unit }, 'inHg').value).toBeGreaterThan(at(40));
      expect(convert({ value: most, unit }, 'inHg').value).toBeLessThan(at(80));
    }
  });
});
