import { describe, expect, test } from 'vitest';
import { mixture } from '../../src/recipes/mixture';

describe('a mixture', () => {
  test('is as acid as its least acid part', () => {
    const acid = mixture({
      parts: [
        { food: 'peach', mass: '2 kg' },
        { food: 'plum', mass: '1 kg' },
      ],
    });
    expect(acid).toMatchObject({ known: true, acidity: 'acid' });
    const low = mixture({
      parts: [
        { food: 'peach', mass: '20 kg' },
        { food: 'banana', mass: '100 g' },
      ],
    });
    expect(low).toMatchObject({ acidity: 'low-acid', decidedBy: ['banana'] });
  });

  test('is made of its parts by mass', () => {
    const found = mixture({
      parts: [
        { food: 'peach', mass: '3 lb' },
        { food: 'sugar', mass: '1 lb' },
      ],
    });
    if (!found.known) throw new Error('not known');
    expect(found.mass).toEqual({ value: 4, unit: 'lb' });
    expect(found.parts.map(({ share }) => share)).toEqual([0.75, 0.25]);
    expect(found.acidity).toBe('acid');
    const peach = mixture({ parts: [{ food: 'peach', mass: '3 lb' }] });
    if (!peach.known) throw new Error('not known');
    // sugar brings no water to speak of
    expect(found.moisture.likely).toBeCloseTo(peach.moisture.likely * 0.75, 3);
    expect(found.moisture.likely + found.solids.likely).toBeCloseTo(1, 12);
  });

  test('tells its water activity where it is dried to a moisture', () => {
    const wet = mixture({
      parts: [
        { food: 'peach', mass: '1 kg' },
        { food: 'plum', mass: '1 kg' },
      ],
      targetMoisture: 0.3,
    });
    const dry = mixture({
      parts: [
        { food: 'peach', mass: '1 kg' },
        { food: 'plum', mass: '1 kg' },
      ],
      targetMoisture: 0.18,
    });
    if (!(wet.known && dry.known)) throw new Error('not known');
    expect(dry.waterActivity?.likely).toBeLessThan(wet.waterActivity?.likely as number);
  });

  test('names the recipes that mix it, and warns of canning it by any other', () => {
    const found = mixture({
      parts: [
        { food: 'peach', mass: '1 kg' },
        { food: 'apple', mass: '1 kg' },
      ],
    });
    if (!found.known) throw new Error('not known');
    expect(found.recipes.map(({ recipe }) => recipe)).toContain('peach-apple-salsa');
    expect(found.cautions[0]).toMatchObject({ id: 'mixture-needs-a-recipe', severity: 'danger' });
  });
});
