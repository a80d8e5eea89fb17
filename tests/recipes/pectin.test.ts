import { describe, expect, test } from 'vitest';
import { pectinIn, pectinKind } from '../../src/recipes/pectin';
import { RECIPES } from '../../src/recipes/rows/rows';
import type { IngredientRow } from '../../src/recipes/rows/tables';

const line = (given: Partial<IngredientRow>) => ({ role: 'pectin', ...given }) as IngredientRow;

describe('pectin of a recipe', () => {
  // USDA Complete Guide to Home Canning, Guide 7: a package of 1 3/4 oz, a pouch of 3 fl oz
  test('is weighed where it is powdered', () => {
    expect(pectinIn(line({ food: 'pectin', packages: 1 }))).toEqual({ value: 49.6, unit: 'g' });
    expect(pectinIn(line({ food: 'pectin', packages: 2 }))).toEqual({ value: 99.2, unit: 'g' });
  });
  test('is measured where it is liquid', () => {
    expect(pectinIn(line({ food: 'liquid-pectin', packages: 2 }))).toEqual({ value: 177.4, unit: 'mL' });
  });
  test('is not known where the page counts no packages', () => {
    expect(pectinIn(line({ food: 'pectin', amount: '4 1/2 tbsp' }))).toBeUndefined();
  });
  test('is liquid only where the line says so', () => {
    expect(pectinKind(line({ food: 'liquid-pectin' }))).toBe('liquid');
    expect(pectinKind(line({ food: 'pectin' }))).toBe('powdered');
  });
  test('in every recipe that counts packages comes to an amount', () => {
    const lines = RECIPES.flatMap(({ ingredients }) => ingredients.filter(({ packages }) => packages !== undefined));
    expect(lines.length).toBeGreaterThan(10);
    for (const each of lines) expect(pectinIn(each)?.unit).toBe(pectinKind(each) === 'liquid' ? 'mL' : 'g');
  });
});
