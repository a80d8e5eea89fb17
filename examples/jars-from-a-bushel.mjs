/** How many jars come from a bushel? Invented: a bushel of pears and one of persimmons, bought at a farm stand. */
import { formatQuantity, rawForJars, sources } from 'stillroom';

const asked = [
  { food: 'pears', form: 'halves', jar: 'quart', raw: '1 bushel' },
  { food: 'persimmons', form: 'puree', jar: 'pint', raw: '1 bushel' },
];

for (const question of asked) {
  const { food, form, jar, raw } = question;
  console.log(`${raw} of ${food}, as ${form} in ${jar} jars`);

  const answer = rawForJars(question);
  if (!answer.known) {
    console.log(`  No answer: ${answer.reason.text}`);
    for (const { text } of answer.instead) console.log(`  - ${text}`);
    continue;
  }

  const { low, likely, high } = answer.jars;
  const perJar = answer.rawPerJar;
  console.log(`  Count on ${low} jars. ${likely} is likely. Have ${high} clean and ready.`);
  console.log(
    `  One jar takes ${formatQuantity(perJar.low)} to ${formatQuantity(perJar.high)} of ${food} as you bought them.`,
  );

  const [line] = answer.basis.filter(({ of }) => of === 'rawPerJar');
  const [work] = sources({ ids: [line.source] });
  console.log(`  Source: ${work.title}, ${line.locator}`);
}
