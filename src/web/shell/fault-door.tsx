import { Component, type ReactNode } from 'react';
import type { Words } from '../words/words.ts';

interface FaultDoorProps {
  readonly words: Words;
  readonly children: ReactNode;
}

/** The outermost door: a fault of the page itself is said in words, and what is not saved yet stays kept. */
export class FaultDoor extends Component<FaultDoorProps, { readonly fault?: string }> {
  override state: { readonly fault?: string } = {};

  static getDerivedStateFromError(cause: unknown): { readonly fault: string } {
    return { fault: cause instanceof Error ? cause.message : String(cause) };
  }

  override render(): ReactNode {
    const { words, children } = this.props;
    const { fault } = this.state;
    if (fault === undefined) return children;
    return (
      <div className="message" role="alert">
        <p>{words.say('page.fault')}</p>
        <p className="quiet small" lang="en">
          {fault}
        </p>
        <button type="button" onClick={() => window.location.reload()}>
          {words.say('page.fault.again')}
        </button>
      </div>
    );
  }
}
