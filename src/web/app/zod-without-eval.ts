// A strict content security policy forbids the code zod would otherwise compile for speed, and zod tries that where the
// first schema is made: this module is imported before any that makes one.

import { z } from 'zod';

z.config({ jitless: true });
