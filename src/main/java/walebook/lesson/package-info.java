/**
 * Lesson packs: read and check a folder of pack.yaml, lesson.md and pictures; share its test pieces
 * out to a class.
 */
@NullMarked
package walebook.lesson;

import org.jspecify.annotations.NullMarked;
