import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import foodTable from '../../data/foods/foods.json';
import { findNamed, lookUp, nameKey, nearestNames } from '../../src/common/names';
import { editDistance } from '../../src/common/nearestNames';
import { seeded } from '../../src/common/seeded';
import { nameKey as keyByPatterns, nearestNames as nearestByLetters } from '../helpers/oracle/names';

const foods = [
  { name: 'peach', synonyms: ['yellow peach'] },
  { name: 'sour cherry', synonyms: ['tart cherry', 'pie cherry', 'cherry'] },
  { name: 'sweet cherry', synonyms: ['cherry'] },
  { name: 'Asian pear' },
  { name: 'pear' },
  { name: 'snap bean', synonyms: ['green bean', 'string bean'] },
];
const find = (text: string) => lookUp(text, foods, 'food', 'food').name;

describe('lookUp', () => {
  test.each([
    ['peaches', 'peach'],
    ['Peach', 'peach'],
    ['yellow peaches', 'peach'],
    ['cherries, sour', 'sour cherry'],
    ['Pear, Asian', 'Asian pear'],
    ['pears', 'pear'],
    ['green beans', 'snap bean'],
    ['  string-beans ', 'snap bean'],
  ])('%s is %s', (text, name) => expect(find(text)).toBe(name));

  test('an unknown name offers the nearest', () => {
    expect(() => find('paech')).toThrow('a known food; nearest: peach');
    expect(() => find('white peach')).toThrow('nearest: peach');
    expect(() => find('granite')).toThrow(
      expect.objectContaining({ code: 'UNKNOWN_NAME', path: 'food', expected: 'a known food' }),
    );
  });

  test('a name that could be two foods lists both', () => {
    expect(() => find('cherries')).toThrow('that name could be sour cherry or sweet cherry');
  });

  test('its own name beats a synonym of another', () => {
    const list = [{ name: 'plum' }, { name: 'prune', synonyms: ['plum'] }];
    expect(findNamed('plums', list)).toEqual([{ name: 'plum' }]);
  });
});

test('nameKey is the same whatever the order, case, accents and marks', () => {
  expect(nameKey('Cherries, sour')).toBe(nameKey('sour cherry'));
  expect(nameKey('Jalapeño peppers')).toBe(nameKey('pepper (jalapeno)'));
  expect(nameKey('asparagus')).toBe('asparagus');
  expect(nameKey('radishes and boxes')).toBe('box radish');
});

describe('editDistance', () => {
  test.each([
    ['', 'abc', 3],
    ['peach', 'peach', 0],
    ['peach', 'paech', 1],
    ['peach', 'pear', 2],
    ['plum', 'plumb', 1],
  ])('%s to %s is %d', (one, other, distance) => expect(editDistance(one, other)).toBe(distance));

  test('is the same both ways, and never more than the longer word', () => {
    const word = fc.string({ maxLength: 12 });
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(editDistance(a, b)).toBe(editDistance(b, a));
        expect(editDistance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
      }),
    );
  });
});

test('nearestNames gives five at most, and none that is far', () => {
  const many = Array.from({ length: 20 }, (_, i) => `peach ${i}`);
  expect(nearestNames('peach', many)).toHaveLength(5);
  expect(nearestNames('zzzzzz', many)).toEqual([]);
  expect(nearestNames('x'.repeat(10_000), many)).toEqual([]);
});

test('when no name is near, the nearest synonyms are offered', () => {
  const squash = [{ name: 'summer squash', synonyms: ['zucchini', 'courgette'] }];
  expect(() => lookUp('zuchini', squash, 'food', 'food')).toThrow('a known food; nearest: zucchini');
  expect(() => lookUp('sumer squash', squash, 'food', 'food')).toThrow('a known food; nearest: summer squash');
});

describe('names are compared as in the plain way', () => {
  const random = seeded(3);
  const pick = <T>(list: ArrayLike<T>): T => list[Math.floor(random() * list.length)] as T;
  const rows = (foodTable as { rows: readonly { name: string; names: readonly string[] }[] }).rows;
  const foods = rows.flatMap(({ name, names }) => [name, ...names]);
  /** A name with a few letters put in, left out, changed or swapped, or a second name after it. */
  function misspelled(): string {
    let text = pick(foods);
    for (let times = Math.floor(random() * 5); times > 0; times--) {
      const at = Math.floor(random() * text.length);
      const [before, after] = [text.slice(0, at), text.slice(at)];
      text = pick([
        () => before + pick('abcdefghijklmnopqrstuvwxyz s%/-é') + after,
        () => before + after.slice(1),
        () => before + pick('aeiouxyz7 ') + after.slice(1),
        () => before + after.slice(1, 2) + after.slice(0, 1) + after.slice(2),
        () => `${text} ${pick(foods)}`,
        () => text.toUpperCase(),
      ])();
    }
    return text;
  }
  const texts = Array.from({ length: 1500 }, misspelled);

  test('the keys', () => {
    for (const text of [...foods, ...texts, '', ' ', 'the', 'İstanbul', 'ß', '½ pint', 'x'.repeat(300)]) {
      expect(nameKey(text), text).toBe(keyByPatterns(text));
    }
  });

  test('the nearest of all foods, and of a few', () => {
    const few = foods.slice(0, 40);
    for (const text of [...texts, '', 'zzzz', 'ab', 'x'.repeat(300), foods.slice(0, 9).join(' ')]) {
      expect(nearestNames(text, foods), text).toEqual(nearestByLetters(text, foods));
      expect(nearestNames(text, few), text).toEqual(nearestByLetters(text, few));
    }
  });
});
