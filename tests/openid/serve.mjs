// An OpenID provider for tests: `node serve.mjs PORT KEYS SHIFT_S`. KEYS is a file of its signing keys, SHIFT_S
// what its clock is ahead by. It says "ready" once it listens and ends with its standard input.
import { readFileSync } from 'node:fs';

const [port, keys, shift] = process.argv.slice(2);
const now = Date.now;
Date.now = () => now() + 1000 * Number(shift);
const { default: Provider } = await import('oidc-provider');

const provider = new Provider(`http://127.0.0.1:${port}`, {
  clients: [
    {
      client_id: 'fry',
      client_secret: 's3cret',
      redirect_uris: ['http://127.0.0.1/sign-in/company/back'],
      response_types: ['code'],
      grant_types: ['authorization_code'],
    },
  ],
  cookies: { keys: ['only for tests'] },
  jwks: JSON.parse(readFileSync(keys, 'utf8')),
  pkce: { required: () => true },
});
provider.listen(Number(port), '127.0.0.1', () => console.log('ready'));
process.stdin.resume();
process.stdin.on('end', () => process.exit(0));
