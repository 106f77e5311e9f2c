#!/usr/bin/env node
import { runDoor } from '../scripts/door.mjs';

await runDoor(process.argv.slice(2));
