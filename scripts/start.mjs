import { runDoor } from './door.mjs';

await runDoor(['open', ...process.argv.slice(2)]);
