const assert = require('node:assert/strict');
const { readFileSync } = require('node:fs');
const all = require('stillroom');

const { exports: paths } = JSON.parse(readFileSync('node_modules/stillroom/package.json', 'utf8'));
const modules = Object.keys(paths).filter((path) => path !== '.' && paths[path].require !== undefined);
for (const path of modules) {
  const module = require(`stillroom/${path.slice(2)}`);
  for (const name of Object.keys(module))
    if (name in all) assert.equal(module[name], all[name], `${path} ${name} is the same in the index`);
}
assert.throws(() => require('stillroom/quantity').convert('1 cup', 'lb'), all.StillroomError);
console.log(
  `CJS: ${modules.length} modules, ${all.formatQuantity(all.convert('1 bushel', 'quart'), { rounding: 'down' })} in a bushel`,
);

// an app that loads both builds still knows the error of either
import('stillroom').then((other) => {
  assert.notEqual(other.StillroomError, all.StillroomError);
  assert.throws(() => other.convert('1 cup', 'lb'), all.StillroomError);
  assert.throws(() => all.convert('1 cup', 'lb'), other.StillroomError);
});
