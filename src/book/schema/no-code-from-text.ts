import * as z from 'zod';

// The page's content security policy forbids code that is made from text, and the attempt alone is reported as a
// breach. Set before any schema is made, since each decides then. Read and measured: the book reads as fast.
z.config({ jitless: true });
