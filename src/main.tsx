import { render } from 'preact';
import { App } from './pages/app.tsx';
import './style/style.css';

const place = document.getElementById('app');
if (place) render(<App />, place);
