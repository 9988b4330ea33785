// Tells TypeScript what Vite makes of an imported style sheet or picture.

/// <reference types="vite/client" />
