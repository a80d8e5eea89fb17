/** Serves the repository, for a look at the app: npm run build:js && node examples/app/serve.mjs [PORT] */
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
const types = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css' };

const server = createServer(({ url }, response) => {
  const { pathname } = new URL(url, 'http://localhost');
  const file = join(root, pathname.endsWith('/') ? `${pathname}index.html` : pathname);
  const found = file.startsWith(root) && statSync(file, { throwIfNoEntry: false })?.isFile();
  response.writeHead(found ? 200 : 404, { 'content-type': types[extname(file)] ?? 'application/octet-stream' });
  if (found) createReadStream(file).pipe(response);
  else response.end();
});
server.listen(Number(process.argv[2] ?? 8080), '127.0.0.1', () => {
  console.log(`http://localhost:${server.address().port}/examples/app/`);
});
