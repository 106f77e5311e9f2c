import type { ReactElement } from 'react';

/** Hatching by owner: shape tells them apart, the words beside it say which is which. */
export const OwnerPatterns = (): ReactElement => (
  <svg className="patterns" width="0" height="0" aria-hidden="true" focusable="false">
    <defs>
      <pattern
        id="owner-machine"
        width="6"
        height="6"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <line x1="0" y1="0" x2="0" y2="6" />
      </pattern>
      <pattern id="owner-supply" width="6" height="6" patternUnits="userSpaceOnUse">
        <circle cx="3" cy="3" r="1.3" />
      </pattern>
      <pattern id="owner-people" width="5" height="5" patternUnits="userSpaceOnUse">
        <line x1="0" y1="2.5" x2="5" y2="2.5" />
      </pattern>
      <pattern id="owner-material" width="7" height="7" patternUnits="userSpaceOnUse">
        <path d="M0 0l7 7M7 0l-7 7" />
      </pattern>
    </defs>
  </svg>
);
