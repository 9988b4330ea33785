// Catches a page that fails to load or to draw, and says so in its place. Refused requests are shown by ProblemNote.

import { Component, type ReactNode } from 'react';
import { Button } from '../controls/button.tsx';
import { words } from '../words/words.ts';

interface PageBoundaryState {
  readonly failed: boolean;
}

export class PageBoundary extends Component<{ readonly children: ReactNode }, PageBoundaryState> {
  override state: PageBoundaryState = { failed: false };

  static getDerivedStateFromError(): PageBoundaryState {
    return { failed: true };
  }

  override render(): ReactNode {
    if (!this.state.failed) return this.props.children;
    return (
      <div role="alert">
        <h1>{words.app.pageFailedTitle}</h1>
        <p>{words.app.pageFailedText}</p>
        <Button onClick={() => window.location.reload()}>{words.app.loadAgain}</Button>
      </div>
    );
  }
}
