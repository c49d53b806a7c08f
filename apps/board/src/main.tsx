import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import './style/index.css';
import './drawing/drawing.css';
import './board/door.css';

const root = document.getElementById('root');
if (!root) throw new Error('main: the page has no element with the id root');
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
