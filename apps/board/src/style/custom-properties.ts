import 'react';

declare module 'react' {
  /** Our own custom properties may be set by a view, e.g. a person's ink. */
  interface CSSProperties {
    [property: `--${string}`]: string | undefined;
  }
}
