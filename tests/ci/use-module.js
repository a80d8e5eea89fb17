import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import * as all from 'stillroom';

const { exports } = JSON.parse(readFileSync('node_modules/stillroom/package.json', 'utf8'));
const modules = Object.keys(exports).filter((path) => path !== '.' && exports[path].import !== undefined);
const whole = new Map(Object.entries(all));
const found = new Set();
for (const path of modules) {
  const module = await import(`stillroom/${path.slice(2)}`);
  for (const [name, value] of Object.entries(module))
    if (whole.has(name)) assert.equal(value, whole.get(name), `${path} ${name} is the same in the index`);
  for (const name of Object.keys(module)) found.add(name);
}
assert.deepEqual(
  [...whole.keys()].filter((name) => !found.has(name)),
  [],
  'the index has nothing of its own',
);
const answer = all.testedProcess({
  food: 'peach',
  form: 'halves',
  pack: 'hot',
  jar: 'pint',
  method: 'boiling-water',
  elevation: '3,400 ft',
});
assert.equal(answer.tested && answer.minutes, 30);
assert.throws(() => all.convert('1 cup', 'lb'), all.StillroomError);
console.log(`ESM: ${modules.length} modules, peach halves in pints at 3,400 ft: ${answer.minutes} min`);
