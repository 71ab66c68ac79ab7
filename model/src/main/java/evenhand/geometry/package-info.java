/**
 * What the links of an axle make of travel and roll: where its roll centre goes, how it steers and leans its wheels, and
 * with which leverage springs and dampers work. Lengths in m, angles in rad, axes as ISO 8855; it knows no car.
 */
@NullMarked
package evenhand.geometry;

import org.jspecify.annotations.NullMarked;
