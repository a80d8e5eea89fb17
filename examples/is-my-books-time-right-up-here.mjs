/** My book's time is for sea level. What is it up here? Invented: a kitchen at 7,200 ft and a ring binder of recipes. */
import { formatQuantity, ownProcess } from 'stillroom';

const kitchen = { method: 'boiling-water', elevation: '7,200 ft' };
const citation = 'The mountain kitchen binder, 1988';
const headspace = '1/2 in';
const pages = [
  { name: 'Plums', foods: ['plums'], form: 'whole', pack: 'hot', jar: 'quart', minutes: 15, headspace },
  { name: 'Quinces', foods: ['quinces'], form: 'sliced', pack: 'hot', jar: 'pint', minutes: 20, headspace },
  { name: 'Green beans', foods: ['green beans'], form: 'whole', pack: 'raw', jar: 'pint', minutes: 180, headspace },
];

for (const page of pages) {
  console.log(`${page.name}, ${page.pack} pack, ${page.jar} jars: the book says ${page.minutes} minutes`);

  const answer = ownProcess({ ...page, ...kitchen, citation });
  if (!answer.tested) {
    console.log(`  No time: ${answer.reason.text}.`);
    for (const { text } of answer.instead) console.log(`  - ${text}`);
    continue;
  }

  const { minutes, byYourBook, byTables, whoseMinutes, cautions } = answer;
  console.log(`  At ${kitchen.elevation} the book's time becomes ${byYourBook} minutes.`);
  if (byTables !== undefined) console.log(`  The tested time in these tables is ${byTables.minutes} minutes.`);
  console.log(
    `  Process for ${minutes} minutes, from ${whoseMinutes}, with ${formatQuantity(answer.headspace)} of headspace.`,
  );
  if (byTables === undefined) console.log(`  Nobody here tested it. ${cautions[0].text}`);
}
