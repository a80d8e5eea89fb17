import { describe, expect, test } from 'vitest';
import { readTimeOfDay } from '../../src/words/timeOfDay';
import { thrownBy } from '../helpers/errors';

describe('a time of day', () => {
  test.each([
    ['8:00', 480],
    ['08:00', 480],
    ['8 am', 480],
    ['8AM', 480],
    ['8:30 pm', 1230],
    ['8:30 p.m.', 1230],
    ['20:15', 1215],
    ['13:30', 810],
    ['noon', 720],
    ['12 noon', 720],
    ['12 pm', 720],
    ['12:30 am', 30],
    ['midnight', 0],
    ['0:00', 0],
    ['23:59', 1439],
    [' 7:05  am ', 425],
  ])('%s', (given, minutes) => {
    expect(readTimeOfDay(given)).toBe(minutes);
  });
  test.each([
    [undefined, 'MISSING'],
    [8, 'WRONG_TYPE'],
    ['', 'NOT_A_QUANTITY'],
    ['8', 'NOT_A_QUANTITY'],
    ['13', 'NOT_A_QUANTITY'],
    ['early', 'NOT_A_QUANTITY'],
    ['8 h', 'NOT_A_QUANTITY'],
    ['8:5', 'NOT_A_QUANTITY'],
    ['8:60', 'OUT_OF_RANGE'],
    ['24:00', 'OUT_OF_RANGE'],
    ['13 pm', 'OUT_OF_RANGE'],
    ['0:30 am', 'OUT_OF_RANGE'],
    ['1'.repeat(200), 'NOT_A_QUANTITY'],
  ])('not %s', (given, code) => {
    const error = thrownBy(() => readTimeOfDay(given, 'start'));
    expect(error).toMatchObject({ code, path: 'start', given });
    expect(error.expected).toContain('"8:00", "8 am", "8:30 pm", "20:15" or "noon"');
  });
  test('an hour by itself is asked about', () => {
    expect(thrownBy(() => readTimeOfDay('8')).expected).toContain('write "8 am" or "8 pm"');
  });
});
