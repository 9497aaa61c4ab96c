import { createApp } from 'vue';
import App from './App.vue';
import 'quilt-reckoner/backing';

createApp(App).mount('#root');
