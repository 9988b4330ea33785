// Catches a page that fails to load or to draw, and says so in its place. Refused requests are shown by ProblemNote.

import { Component, type ReactNode } from 'react';
import { Button } from '../controls/button.tsx';
import { words } from '../words/words.ts';
import { NoConnectionError } from './http-client.ts';

interface PageBoundaryProps {
  /** Where the person is; going elsewhere leaves the failed page behind. */
  readonly location: string;
  readonly children: ReactNode;
}

interface PageBoundaryState {
  readonly failure: { readonly error: unknown } | null;
}

export class PageBoundary extends Component<PageBoundaryProps, PageBoundaryState> {
  override state: PageBoundaryState = { failure: null };

  static getDerivedStateFromError(error: unknown): PageBoundaryState {
    return { failure: { error } };
  }

  override componentDidUpdate(before: PageBoundaryProps): void {
    if (before.location !== this.props.location && this.state.failure !== null) this.setState({ failure: null });
  }

  override render(): ReactNode {
    const { failure } = this.state;
    if (failure === null) return this.props.children;
    const isAway = failure.error instanceof NoConnectionError;
    return (
      <div role="alert">
        <h1>{isAway ? words.app.serverAwayTitle : words.app.pageFailedTitle}</h1>
        <p>{isAway ? words.app.serverAwayText : words.app.pageFailedText}</p>
        <Button onClick={() => window.location.reload()}>{words.app.loadAgain}</Button>
      </div>
    );
  }
}
