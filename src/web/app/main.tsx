// Starts the browser part.

import './zod-without-eval.ts';

import { QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { createQueryClient } from './query-client.ts';
import './tokens.css';
import './ground.css';

const place = document.getElementById('page');
if (place === null) throw new Error('index.html has no element with the id "page"');

createRoot(place).render(
  <StrictMode>
    <QueryClientProvider client={createQueryClient()}>
      <App />
    </QueryClientProvider>
  </StrictMode>,
);
