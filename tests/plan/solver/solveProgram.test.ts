import { describe, expect, test } from 'vitest';
import { planProgram, solveProgram } from '../../../src/plan/index';
import { codeText } from '../../helpers/errors';
import { GARBAGE } from '../../helpers/garbage';
import { randomDay } from '../randomDay';

const program = {
  variables: [
    { name: 'x', worth: 5, integer: true },
    { name: 'y', worth: 4 },
  ],
  bounds: [{ name: 'one', terms: [['x', 6] as const, ['y', 4] as const], max: 24 }],
};
const code = (given: unknown, options?: unknown) => codeText(() => solveProgram(given as never, options as never));

test('a program of a day is solved', () => {
  const found = solveProgram(planProgram(randomDay(3)));
  expect(found).toMatchObject({ feasible: true, optimal: true, gap: 0 });
});
test('no nodes, no proof', () => {
  expect(solveProgram({ ...program, bounds: [...program.bounds] }, { nodes: 0 }).optimal).toBe(false);
});
test.each(GARBAGE.map((garbage) => [garbage] as [unknown]))('no program: %j', (garbage) => {
  expect(code(garbage)).toMatch(/^(MISSING|WRONG_TYPE)/);
  expect(code({ ...program, variables: garbage === undefined ? 1 : garbage })).toMatch(
    Array.isArray(garbage) ? /^UNKNOWN_NAME/ : /^(MISSING|WRONG_TYPE)/,
  );
  expect(code({ ...program, bounds: [garbage] })).toMatch(/^(MISSING|WRONG_TYPE)/);
});
describe('the field that is wrong is named', () => {
  const [x, y] = program.variables;
  const [one] = program.bounds;
  test.each([
    ['MISSING variables[0].name', { ...program, variables: [{ worth: 1 }, y] }],
    ['MISSING variables[0].worth', { ...program, variables: [{ name: 'x' }, y] }],
    ['OUT_OF_RANGE variables[0].worth', { ...program, variables: [{ ...x, worth: Number.NaN }, y] }],
    ['WRONG_TYPE variables[0].integer', { ...program, variables: [{ ...x, integer: 'yes' }, y] }],
    ['CONTRADICTION variables[1].name', { ...program, variables: [x, x] }],
    ['WRONG_TYPE bounds[0].name', { ...program, bounds: [{ ...one, name: 1 }] }],
    ['WRONG_TYPE bounds[0].terms[0]', { ...program, bounds: [{ ...one, terms: ['x'] }] }],
    ['UNKNOWN_NAME bounds[0].terms[0]', { ...program, bounds: [{ ...one, terms: [['__proto__', 1]] }] }],
    ['WRONG_TYPE bounds[0].terms[0]', { ...program, bounds: [{ ...one, terms: [['x', '1']] }] }],
    ['WRONG_TYPE bounds[0].max', { ...program, bounds: [{ ...one, max: '24' }] }],
    ['TOO_MUCH variables', { ...program, variables: Array(5001).fill(x) }],
    ['UNKNOWN_NAME per[0]', { ...program, per: [['z', 1]] }],
  ])('%s', (expected, given) => expect(code(given)).toBe(expected));
  test('and of the options', () => {
    expect(code(program, null)).toBe('WRONG_TYPE options');
    expect(code(program, { nodes: 1.5 })).toBe('OUT_OF_RANGE options.nodes');
    expect(code(program, { nodes: '9' })).toBe('WRONG_TYPE options.nodes');
  });
});
