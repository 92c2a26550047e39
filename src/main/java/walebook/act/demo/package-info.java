/** An invented evening class, made by a seeded generator: nobody and nothing in it is real. */
@NullMarked
package walebook.act.demo;

import org.jspecify.annotations.NullMarked;
