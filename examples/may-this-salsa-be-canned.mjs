/** May this salsa be canned? Invented: a tomato and corn salsa, made up in a kitchen at 1,100 ft. */
import { sources, waysToKeep } from 'stillroom';
import { mixture } from 'stillroom/recipes';

const salsa = [
  { food: 'tomato', mass: '4 lb' },
  { food: 'sweet corn', form: 'kernels', mass: '1 1/2 lb' },
  { food: 'onion', mass: '1 lb' },
  { food: 'jalapeno', mass: '1/2 lb' },
];
const kitchen = { elevation: '1,100 ft', canners: [{ method: 'boiling-water' }], jars: [{ jar: 'pint' }] };

const mix = mixture({ parts: salsa });
console.log(`This salsa: ${salsa.map(({ food, mass }) => `${mass} of ${food}`).join(', ')}`);
if (!mix.known) console.log(`No answer: ${mix.reason.text}`);
else if (mix.recipes.length > 0) console.log(`Only exactly as ${mix.recipes.map(({ name }) => name).join(' or ')}.`);
else {
  console.log(`No: no recipe in these tables mixes these foods, and together they count as ${mix.acidity}.`);
  for (const { severity, text } of mix.cautions) if (severity === 'danger') console.log(`- ${text}`);
}

console.log(
  `\nSalsas of tomatoes for a boiling-water canner, in pints at ${kitchen.elevation}, made exactly as printed:`,
);
const { ways, basis } = waysToKeep({ food: 'tomato', kitchen });
for (const { name, makes, processes, mustKeep } of ways) {
  if (makes !== 'salsa' || processes.length === 0) continue;
  console.log(`- ${name}: ${processes[0].minutes} minutes. Keep ${mustKeep.join('; ')}.`);
}
const [line] = basis.filter(({ of }) => of === 'ways[].processes[].minutes');
console.log(`Source: ${sources({ ids: [line.source] })[0].title}`);
